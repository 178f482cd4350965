package org.sagwise.part;

import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.Keys;

/**
 * A coil.
 *
 * @param ohm resistance at 20 °C (Ω), above 0
 * @param limitW highest power it is meant for (W), where one is given
 * @param winding how it is wound, where that is known; its resistance is {@code ohm}
 */
public record CoilSpec(double ohm, OptionalDouble limitW, Optional<CoilWinding> winding) {

    private static final double MILLI = 1e-3;

    public CoilSpec {
        Require.positive(ohm, "ohm");
        limitW.ifPresent(limit -> Require.positive(limit, "limitW"));
    }

    /** The coil that these values describe. */
    static CoilSpec of(EffectiveKeys values, Entries<Alloy> alloys) {
        Optional<CoilWinding> winding = values.group("wire").map(wire -> winding(wire, alloys));
        double ohm = values.number("ohm")
                .orElseGet(() -> winding.map(CoilWinding::ohm).orElseThrow());
        return new CoilSpec(ohm, values.number("limit_W"), winding);
    }

    private static CoilWinding winding(Keys wire, Entries<Alloy> alloys) {
        Alloy alloy = wire.text("alloy").flatMap(alloys::find).orElseThrow();
        WireSize size = wire.has("awg")
                ? new Gauge((int) wire.number("awg", 0)).size()
                : WireSize.ofDiameterMm(wire.number("diameter_mm", 0));
        return new CoilWinding(
                new CoilWire(alloy, size.diameterM(), (int) wire.number("strands", 1)),
                wire.number("wraps", 0),
                wire.number("inner_mm", 0) * MILLI,
                wire.number("legs_mm", 0) * MILLI);
    }

    /** Resistance (Ω) at this temperature (°C). */
    public double ohmAt(double temperatureC) {
        return winding.map(wound -> ohm * wound.wire().alloy().factor().at(temperatureC))
                .orElse(ohm);
    }
}
