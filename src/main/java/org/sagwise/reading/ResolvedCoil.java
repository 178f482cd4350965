package org.sagwise.reading;

import java.util.Optional;
import org.sagwise.part.CoilSpec;
import org.sagwise.part.CoilWinding;
import org.sagwise.scenario.Part;

/**
 * A coil on the bench.
 *
 * @param part the coil as written
 * @param spec what its values mean
 */
public record ResolvedCoil(Part part, CoilSpec spec) {

    /** Temperature at which the ohms of a coil are given, °C. */
    public static final double REFERENCE_C = 20;

    /** Resistance at 20 °C, Ω. */
    public double ohm20() {
        return spec.ohm();
    }

    /** What it is wound of; empty if only its ohms are known, which then do not change. */
    public Optional<CoilWinding> winding() {
        return spec.winding();
    }

    /** Resistance at a temperature (°C), Ω. */
    public double ohmAt(double temperatureC) {
        return spec.ohmAt(temperatureC);
    }
}
