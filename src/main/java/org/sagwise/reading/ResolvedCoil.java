package org.sagwise.reading;

import java.util.Optional;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.CoilWire;
import org.sagwise.part.Gauge;
import org.sagwise.part.WireSize;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;

/**
 * A coil on the bench.
 *
 * @param part the coil as written
 * @param ohm20 resistance at 20 °C, Ω
 * @param winding what it is wound of; empty if only its ohms are known, which then do not change
 */
public record ResolvedCoil(Part part, double ohm20, Optional<CoilWinding> winding) {

    /** Temperature at which the ohms of a coil are given, °C. */
    public static final double REFERENCE_C = 20;

    private static final double MILLI = 1e-3;

    static ResolvedCoil of(Part part, Catalogue catalogue) {
        Optional<CoilWinding> winding = part.keys().group("wire").map(wire -> winding(wire, catalogue));
        double ohm = part.keys()
                .number("ohm")
                .orElseGet(() -> winding.map(CoilWinding::ohm).orElseThrow());
        return new ResolvedCoil(part, ohm, winding);
    }

    /** Resistance at a temperature (°C), Ω. */
    public double ohmAt(double temperatureC) {
        return winding.map(wound -> ohm20 * wound.wire().alloy().factor().at(temperatureC))
                .orElse(ohm20);
    }

    private static CoilWinding winding(Keys wire, Catalogue catalogue) {
        String alloy = wire.text("alloy").orElseThrow();
        WireSize size = wire.has("awg")
                ? new Gauge((int) wire.number("awg", 0)).size()
                : WireSize.ofDiameterMm(wire.number("diameter_mm", 0));
        return new CoilWinding(
                new CoilWire(catalogue.alloys().find(alloy).orElseThrow(), size.diameterM(), (int)
                        wire.number("strands", 1)),
                wire.number("wraps", 0),
                wire.number("inner_mm", 0) * MILLI,
                wire.number("legs_mm", 0) * MILLI);
    }
}
