package org.sagwise.reading;

import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;

/** What a meter puts between its two probes. */
final class MeterInput {

    /**
     * Input resistance of a digital voltmeter: a common amount (Kuphaldt, Lessons in Electric
     * Circuits I).
     */
    static final double VOLTMETER_OHM = 10e6;

    /** What a meter set to ohms puts between its probes: typical, from memory. */
    static final double OHMMETER_OHM = 1e6;

    private static final double MILLI = 1e-3;

    private MeterInput() {}

    /** Resistance of a meter that lies on the bench, Ω. */
    static double ohmOf(Part meter) {
        return switch (meter.meterMode().orElseThrow()) {
            case VOLTS -> VOLTMETER_OHM;
            case AMPS -> meter.numberOrDefault("shunt_mohm") * MILLI;
            case OHMS -> OHMMETER_OHM;
        };
    }

    /** Resistance of the meter in the hand on amps, Ω: that of any meter of which none is said. */
    static double handShuntOhm() {
        return ohmOf(Part.of("hand", PartKind.METER, MeterMode.KEY, MeterMode.AMPS.word()));
    }
}
