package org.sagwise.file;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.sagwise.file.CatalogueDefect.Problem;
import org.sagwise.part.Alloy;
import org.sagwise.part.Card;
import org.sagwise.part.CoilSpec;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.CoilWire;
import org.sagwise.part.Entries;
import org.sagwise.part.Gauge;
import org.sagwise.part.JumperSpec;
import org.sagwise.part.JumperWire;
import org.sagwise.part.TemperatureFactor;
import org.sagwise.part.WireSize;

/** Reads alloys, coils and jumpers from the catalogue. */
final class CatalogueCoils {

    private static final double MILLI = 1e-3;
    private static final double MICRO = 1e-6;

    private final CatalogueCards cards;

    CatalogueCoils(CatalogueCards cards) {
        this.cards = cards;
    }

    Optional<Alloy> alloy(CatalogueFields fields) {
        Card card = cards.read(fields);
        double resistivityOhmM = fields.positive("resistivity_uohm_m") * MICRO;
        double givenAtC = fields.maybePositive("resistivity_at_C").orElse(TemperatureFactor.REFERENCE_C);
        List<double[]> table = fields.pairs("factor");
        double density = fields.positive("density_kg_m3");
        double specificHeat = fields.positive("specific_heat_J_kgK");
        double meltingC = fields.positive("melting_C");
        double emissivity = fields.positive("emissivity");
        return fields.build(() -> {
            TemperatureFactor factor = factor(table);
            return new Alloy(
                    card, resistivityOhmM / factor.at(givenAtC), factor, density, specificHeat, meltingC, emissivity);
        });
    }

    private static TemperatureFactor factor(List<double[]> table) {
        return TemperatureFactor.through(
                table.stream().mapToDouble(row -> row[0]).toArray(),
                table.stream().mapToDouble(row -> row[1]).toArray());
    }

    Optional<CoilSpec> coil(CatalogueFields fields, Entries<Alloy> alloys) {
        Card card = cards.read(fields);
        OptionalDouble limitW = fields.maybePositive("limit_W");
        if (fields.has("ohm") == fields.has("wire")) {
            fields.defect("", Problem.ONE_OF, "ohm, wire");
        }
        OptionalDouble ohm = fields.maybePositive("ohm");
        Optional<CoilWinding> winding = fields.maybeObject("wire").flatMap(wire -> winding(wire, alloys));
        return fields.build(() -> winding.map(wound -> CoilSpec.wound(card, wound, limitW))
                .orElseGet(() -> CoilSpec.plain(card, ohm.getAsDouble(), limitW)));
    }

    private static Optional<CoilWinding> winding(CatalogueFields fields, Entries<Alloy> alloys) {
        Optional<Alloy> alloy = fields.oneOf("alloy", alloys.byId());
        WireSize size = size(fields);
        double wraps = fields.positive("wraps");
        double innerM = fields.positive("inner_mm") * MILLI;
        double legsM = fields.maybeNotNegative("legs_mm").orElse(0) * MILLI;
        int strands = fields.maybeWhole("strands").orElse(1);
        return fields.build(() ->
                new CoilWinding(new CoilWire(alloy.orElseThrow(), size.diameterM(), strands), wraps, innerM, legsM));
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
