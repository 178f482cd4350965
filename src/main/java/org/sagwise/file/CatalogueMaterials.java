package org.sagwise.file;

import static org.sagwise.part.key.KeySpec.above;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;
import static org.sagwise.part.key.KeySpec.whole;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.sagwise.part.Alloy;
import org.sagwise.part.Band;
import org.sagwise.part.Card;
import org.sagwise.part.Chemistry;
import org.sagwise.part.ChemistryCard;
import org.sagwise.part.ContactSpec;
import org.sagwise.part.Gauge;
import org.sagwise.part.JumperSpec;
import org.sagwise.part.JumperWire;
import org.sagwise.part.TemperatureFactor;
import org.sagwise.part.WireSize;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.KeyRules;

/** Reads from the catalogue what parts and joints are made of: chemistries, alloys, contacts, wires. */
final class CatalogueMaterials {

    private static final double MILLI = 1e-3;
    private static final double MICRO = 1e-6;
    private static final double MOST_MOHM = 1_000;

    private static final List<KeySpec> WIRE =
            List.of(optional("awg", whole(0, Gauge.THINNEST)), optional("diameter_mm", above(0, 50)));

    /** Numbers of a chemistry; they stand in the program, their sources in the file. */
    private static final Set<String> CHEMISTRY_NUMBERS =
            new LinkedHashSet<>(List.of("full_V", "nominal_V", "use_cutoff_V", "lowest_V", "rest_curve", "runaway_C"));

    private static final Map<String, Chemistry> CHEMISTRIES = new LinkedHashMap<>();

    static {
        EnumSet.allOf(Chemistry.class).forEach(each -> CHEMISTRIES.put(each.name(), each));
    }

    private final CatalogueCards cards;

    CatalogueMaterials(CatalogueCards cards) {
        this.cards = cards;
    }

    Optional<Alloy> alloy(CatalogueFields fields) {
        Card card = cards.read(fields);
        double resistivityOhmM = fields.number("resistivity_uohm_m", above(0, 1_000)) * MICRO;
        double givenAtC =
                fields.maybeNumber("resistivity_at_C", from(-270, 1_000)).orElse(TemperatureFactor.REFERENCE_C);
        OptionalDouble spreadMicro = fields.maybeNumber("resistivity_spread_uohm_m", above(0, 1_000));
        List<double[]> table = fields.pairs("factor");
        double density = fields.number("density_kg_m3", above(0, 25_000));
        double specificHeat = fields.number("specific_heat_J_kgK", above(0, 15_000));
        double meltingC = fields.number("melting_C", above(0, 4_000));
        double emissivity = fields.number("emissivity", above(0, 1));
        return fields.build(() -> {
            TemperatureFactor factor = factor(table);
            OptionalDouble spreadOhmM =
                    spreadMicro.stream().map(micro -> micro * MICRO).findFirst();
            return new Alloy(
                    card,
                    resistivityOhmM / factor.at(givenAtC),
                    spreadOhmM,
                    factor,
                    density,
                    specificHeat,
                    meltingC,
                    emissivity);
        });
    }

    private static TemperatureFactor factor(List<double[]> table) {
        return TemperatureFactor.through(
                table.stream().mapToDouble(row -> row[0]).toArray(),
                table.stream().mapToDouble(row -> row[1]).toArray());
    }

    Optional<ChemistryCard> chemistry(CatalogueFields fields) {
        Card card = cards.read(fields, CHEMISTRY_NUMBERS);
        Optional<Chemistry> chemistry = fields.oneOf("id", CHEMISTRIES);
        return fields.build(() -> new ChemistryCard(card, chemistry.orElseThrow()));
    }

    Optional<ContactSpec> contact(CatalogueFields fields) {
        Card card = cards.read(fields);
        double ohm = fields.number("contact_mohm", from(0, MOST_MOHM)) * MILLI;
        double[] spread = fields.numbers("spread_mohm", 2);
        return fields.build(() -> new ContactSpec(card, ohm, new Band(spread[0] * MILLI, spread[1] * MILLI)));
    }

    Optional<JumperSpec> jumper(CatalogueFields fields) {
        Card card = cards.read(fields);
        WireSize size = size(fields);
        double lengthM = fields.number("length_mm", above(0, 100_000)) * MILLI;
        double contactsOhm =
                fields.maybeNumber("contacts_mohm", from(0, MOST_MOHM)).orElse(0) * MILLI;
        return fields.build(() -> new JumperSpec(card, new JumperWire(size, lengthM), contactsOhm));
    }

    /** The wire under {@code awg} or {@code diameter_mm}; a stand-in where neither is sound. */
    private static WireSize size(CatalogueFields fields) {
        Keys size = fields.values(WIRE, List.of(KeyRule.exactlyOne("awg", "diameter_mm")), KeyRules.WITHOUT_CATALOGUE);
        if (fields.sound() && size.has("awg")) {
            return new Gauge((int) size.number("awg", 0)).size();
        }
        return WireSize.ofDiameterMm(fields.sound() ? size.number("diameter_mm", 1) : 1);
    }
}
