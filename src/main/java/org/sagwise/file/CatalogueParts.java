package org.sagwise.file;

import java.util.Map;
import java.util.Optional;
import org.sagwise.part.Band;
import org.sagwise.part.BoardSpec;
import org.sagwise.part.Card;
import org.sagwise.part.ChargerSpec;
import org.sagwise.part.ContactSpec;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.SwitchSpec;

/** Reads contacts, switches, fuses, boards and chargers from the catalogue. */
final class CatalogueParts {

    private static final double MILLI = 1e-3;

    private static final Map<String, SwitchSpec.Action> ACTIONS =
            Map.of("button", SwitchSpec.Action.BUTTON, "mosfet", SwitchSpec.Action.MOSFET);

    private final CatalogueCards cards;

    CatalogueParts(CatalogueCards cards) {
        this.cards = cards;
    }

    Optional<ContactSpec> contact(CatalogueFields fields) {
        Card card = cards.read(fields);
        double ohm = fields.notNegative("contact_mohm") * MILLI;
        double[] spread = fields.numbers("spread_mohm", 2);
        return fields.build(() -> new ContactSpec(card, ohm, new Band(spread[0] * MILLI, spread[1] * MILLI)));
    }

    Optional<SwitchSpec> buttonOrTransistor(CatalogueFields fields) {
        Card card = cards.read(fields);
        Optional<SwitchSpec.Action> action = fields.oneOf("type", ACTIONS);
        double ohm = fields.notNegative("closed_mohm") * MILLI;
        return fields.build(() -> new SwitchSpec(card, action.orElseThrow(), ohm));
    }

    Optional<FuseSpec> fuse(CatalogueFields fields) {
        Card card = cards.read(fields);
        double ratingA = fields.positive("rating_A");
        double ohm = fields.notNegative("mohm") * MILLI;
        double meltingA2s = fields.positive("i2t_A2s");
        return fields.build(() -> new FuseSpec(card, ratingA, ohm, meltingA2s));
    }

    Optional<BoardSpec> board(CatalogueFields fields) {
        Card card = cards.read(fields);
        double powerW = fields.positive("power_W");
        double efficiency = fields.positive("efficiency");
        double cutoffV = fields.positive("cutoff_V");
        double maxInputA = fields.positive("max_input_A");
        double outMinV = fields.notNegative("out_min_V");
        double outMaxV = fields.positive("out_max_V");
        return fields.build(() -> new BoardSpec(card, powerW, efficiency, cutoffV, maxInputA, outMinV, outMaxV));
    }

    Optional<ChargerSpec> charger(CatalogueFields fields) {
        Card card = cards.read(fields);
        double currentA = fields.positive("current_A");
        double limitV = fields.positive("limit_V");
        double taperA = fields.notNegative("taper_A");
        return fields.build(() -> new ChargerSpec(card, currentA, limitV, taperA));
    }
}
