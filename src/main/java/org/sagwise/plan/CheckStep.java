package org.sagwise.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.PartKind;
import org.sagwise.reading.MeterDisplay;
import org.sagwise.reading.ProbeReading;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** The readings of a bench check, by which losses in the cell and on the way are told apart. */
public enum CheckStep {
    /** Volts across the cell, the button let go. */
    REST,
    /** Volts across the cell, the button held. */
    CELL,
    /** Volts across the coil, the button held. */
    COIL,
    /** Ohms of the coil. */
    OHM;

    /**
     * Which of these readings the meter in the hand shows; empty if it is another one, or none.
     *
     * @param scenario the bench that was read
     */
    public static Optional<CheckStep> of(Readings readings, Scenario scenario) {
        return readings.probes().flatMap(probes -> of(probes, scenario, readings.fired()));
    }

    private static Optional<CheckStep> of(ProbeReading probes, Scenario scenario, boolean fired) {
        Optional<PartKind> across = scenario.part(probes.red().part())
                .filter(part -> isAcross(part, probes))
                .map(Part::kind);
        if (across.isEmpty()) {
            return Optional.empty();
        }
        MeterDisplay display = probes.display();
        if (display instanceof MeterDisplay.Ohms ohms) {
            return across.get() == PartKind.COIL && Double.isFinite(ohms.ohm()) ? Optional.of(OHM) : Optional.empty();
        }
        if (!(display instanceof MeterDisplay.Volts volts) || Double.isNaN(volts.volts())) {
            return Optional.empty();
        }
        return switch (across.get()) {
            case CELL -> Optional.of(fired ? CELL : REST);
            case COIL -> fired ? Optional.of(COIL) : Optional.empty();
            default -> Optional.empty();
        };
    }

    /** Whether the probes rest on both ends of a part. */
    private static boolean isAcross(Part part, ProbeReading probes) {
        return Set.of(part.terminals().get(0), part.terminals().get(1))
                        .containsAll(List.of(probes.red(), probes.black()))
                && !probes.red().equals(probes.black());
    }
}
