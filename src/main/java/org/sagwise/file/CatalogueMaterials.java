package org.sagwise.file;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.sagwise.file.CatalogueDefect.Problem;
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

/** Reads from the catalogue what parts and joints are made of: chemistries, alloys, contacts, wires. */
final class CatalogueMaterials {

    private static final double MILLI = 1e-3;
    private static final double MICRO = 1e-6;

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
        double resistivityOhmM = fields.positive("resistivity_uohm_m") * MICRO;
        double givenAtC = fields.maybePositive("resistivity_at_C").orElse(TemperatureFactor.REFERENCE_C);
        OptionalDouble spreadMicro = fields.maybePositive("resistivity_spread_uohm_m");
        List<double[]> table = fields.pairs("factor");
        double density = fields.positive("density_kg_m3");
        double specificHeat = fields.positive("specific_heat_J_kgK");
        double meltingC = fields.positive("melting_C");
        double emissivity = fields.positive("emissivity");
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
        double ohm = fields.notNegative("contact_mohm") * MILLI;
        double[] spread = fields.numbers("spread_mohm", 2);
        return fields.build(() -> new ContactSpec(card, ohm, new Band(spread[0] * MILLI, spread[1] * MILLI)));
    }

    Optional<JumperSpec> jumper(CatalogueFields fields) {
        Card card = cards.read(fields);
        WireSize size = size(fields);
        double lengthM = fields.positive("length_mm") * MILLI;
        double contactsOhm = fields.maybeNotNegative("contacts_mohm").orElse(0) * MILLI;
        return fields.build(() -> new JumperSpec(card, new JumperWire(size, lengthM), contactsOhm));
    }

    /** The wire under {@code awg} or {@code diameter_mm}; a stand-in where neither is sound. */
    private static WireSize size(CatalogueFields fields) {
        if (fields.has("awg") == fields.has("diameter_mm")) {
            fields.defect("", Problem.ONE_OF, "awg, diameter_mm");
        }
        OptionalDouble diameterMm = fields.maybePositive("diameter_mm");
        OptionalInt awg = fields.maybeWhole("awg");
        if (awg.isPresent() && awg.getAsInt() <= Gauge.THINNEST) {
            return new Gauge(awg.getAsInt()).size();
        }
        if (awg.isPresent()) {
            fields.defect("awg", Problem.REFUSED, "0 ≤ awg ≤ " + Gauge.THINNEST);
        }
        return WireSize.ofDiameterMm(diameterMm.orElse(1));
    }
}
