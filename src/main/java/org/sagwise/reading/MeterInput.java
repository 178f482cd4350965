package org.sagwise.reading;

import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.Keys;

/** What a meter puts between its two probes. */
final class MeterInput {

    /**
     * Input resistance of a digital voltmeter: a common amount (Kuphaldt, Lessons in Electric
     * Circuits I).
     */
    static final double VOLTMETER_OHM = 10e6;

    /** What a meter set to ohms puts between its probes: typical, from memory. */
    static final double OHMMETER_OHM = 1e6;

    private MeterInput() {}

    /** Resistance of a meter that lies on the bench, Ω. */
    static double ohmOf(EffectiveKeys meter) {
        return switch (MeterMode.of(meter)) {
            case VOLTS -> VOLTMETER_OHM;
            case AMPS -> shuntOhm(meter);
            case OHMS -> OHMMETER_OHM;
        };
    }

    /** Resistance of the meter in the hand on amps, Ω: that of any meter of which none is said. */
    static double handShuntOhm() {
        return shuntOhm(PartKind.METER.effective(Keys.NONE, Keys.NONE, Keys.NONE));
    }

    private static double shuntOhm(EffectiveKeys meter) {
        return meter.milli("shunt_mohm");
    }
}
