package org.sagwise.file;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.sagwise.file.CatalogueDefect.Problem;
import org.sagwise.part.Card;
import org.sagwise.part.CellFormat;
import org.sagwise.part.CellSpec;
import org.sagwise.part.CellSpecBuilder;
import org.sagwise.part.Chemistry;
import org.sagwise.part.ChemistryCard;
import org.sagwise.part.Guard;
import org.sagwise.part.LabelClaim;
import org.sagwise.part.Pulse;

/** Reads kinds and models of cell from the catalogue. */
final class CatalogueCells {

    /** Numbers of a chemistry; they stand in the program, their sources in the file. */
    private static final Set<String> CHEMISTRY_NUMBERS =
            Set.of("full_V", "nominal_V", "use_cutoff_V", "lowest_V", "rest_curve", "runaway_C");

    private static final double MILLI = 1e-3;

    private static final Map<String, Chemistry> CHEMISTRIES = new LinkedHashMap<>();
    private static final Map<String, CellFormat> FORMATS = new LinkedHashMap<>();

    static {
        EnumSet.allOf(Chemistry.class).forEach(each -> CHEMISTRIES.put(each.name(), each));
        EnumSet.allOf(CellFormat.class).forEach(each -> FORMATS.put(each.trade(), each));
    }

    private final CatalogueCards cards;

    CatalogueCells(CatalogueCards cards) {
        this.cards = cards;
    }

    Optional<ChemistryCard> chemistry(CatalogueFields fields) {
        Card card = cards.read(fields, CHEMISTRY_NUMBERS);
        Optional<Chemistry> chemistry = fields.oneOf("id", CHEMISTRIES);
        return fields.build(() -> new ChemistryCard(card, chemistry.orElseThrow()));
    }

    Optional<CellSpec> cell(CatalogueFields fields) {
        Chemistry chemistry = fields.oneOf("chemistry", CHEMISTRIES).orElse(Chemistry.INR);
        CellFormat format = fields.oneOf("format", FORMATS).orElse(CellFormat.F18650);
        CellSpecBuilder cell = CellSpec.builder(chemistry, format)
                .card(cards.read(fields))
                .internalOhm(fields.notNegative("internal_mohm") * MILLI)
                .capacityAh(fields.positive("capacity_mAh") * MILLI)
                .limitA(fields.positive("limit_A"))
                .chargeLimitA(fields.positive("charge_limit_A"));
        double fullV = fields.maybePositive("full_V").orElse(chemistry.fullV());
        double cutoffV = fields.maybePositive("cutoff_V").orElse(chemistry.useCutoffV());
        if (cutoffV >= fullV) {
            fields.defect("cutoff_V", Problem.REFUSED, "cutoff_V must lie below full_V");
        }
        cell.fullV(fullV).cutoffV(cutoffV);
        pulse(fields).ifPresent(cell::pulse);
        fields.maybeObject("guard").flatMap(guard -> guard(guard, chemistry)).ifPresent(cell::guard);
        claim(fields).ifPresent(cell::claim);
        return fields.build(cell::build);
    }

    private static Optional<Pulse> pulse(CatalogueFields fields) {
        if (!fields.has("pulse_A") && !fields.has("pulse_s")) {
            return Optional.empty();
        }
        double currentA = fields.positive("pulse_A");
        double durationS = fields.positive("pulse_s");
        if (currentA <= fields.positive("limit_A")) {
            fields.defect("pulse_A", Problem.REFUSED, "pulse_A must lie above limit_A");
        }
        return Optional.of(new Pulse(currentA, durationS));
    }

    private static Optional<Guard> guard(CatalogueFields fields, Chemistry chemistry) {
        double tripA = fields.positive("trip_A");
        double tripS = fields.notNegative("trip_s");
        double ohm = fields.notNegative("mohm") * MILLI;
        Guard usual = Guard.usual(chemistry, tripA, tripS, ohm);
        double under = fields.maybePositive("under_V").orElse(usual.underVoltageV());
        double over = fields.maybePositive("over_V").orElse(usual.overVoltageV());
        return fields.build(() -> new Guard(tripA, tripS, ohm, under, over));
    }

    private static Optional<LabelClaim> claim(CatalogueFields fields) {
        OptionalDouble limitA = fields.maybePositive("claimed_A");
        OptionalDouble capacityMah = fields.maybePositive("claimed_mAh");
        if (limitA.isEmpty() && capacityMah.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble capacityAh =
                capacityMah.isPresent() ? OptionalDouble.of(capacityMah.getAsDouble() * MILLI) : OptionalDouble.empty();
        return Optional.of(new LabelClaim(limitA, capacityAh));
    }
}
