package org.sagwise.part;

import org.sagwise.part.key.Keys;

/**
 * The small circuit board inside a protected cell.
 *
 * @param tripA current above which it opens (A), above 0
 * @param tripS how long the current must last until it opens (s), 0 or more
 * @param ohm resistance that it adds in series with the cell (Ω), 0 or more
 * @param underVoltageV cell voltage below which it opens (V)
 * @param overVoltageV cell voltage above which it opens (V), above the lower one
 */
public record Guard(double tripA, double tripS, double ohm, double underVoltageV, double overVoltageV) {

    public Guard {
        Require.positive(tripA, "tripA");
        Require.notNegative(tripS, "tripS");
        Require.notNegative(ohm, "ohm");
        Require.positive(underVoltageV, "underVoltageV");
        Require.positive(overVoltageV, "overVoltageV");
        if (overVoltageV <= underVoltageV) {
            throw new IllegalArgumentException("overVoltageV must lie above underVoltageV");
        }
    }

    /** The guard that these keys describe, each of which is there. */
    static Guard of(Keys keys) {
        return new Guard(
                keys.number("trip_A").orElseThrow(),
                keys.number("trip_s").orElseThrow(),
                keys.number("mohm").orElseThrow() * 1e-3,
                keys.number("under_V").orElseThrow(),
                keys.number("over_V").orElseThrow());
    }

    /** The same guard with another resistance (Ω). */
    Guard withOhm(double other) {
        return new Guard(tripA, tripS, other, underVoltageV, overVoltageV);
    }

    /**
     * A guard with the voltage limits that are usual for a kind of cell: 2.5 and 4.28 V for the 4.2
     * V kinds, 2.0 and 3.75 V for IFR; from memory, no source at hand.
     */
    public static Guard usual(Chemistry chemistry, double tripA, double tripS, double ohm) {
        return switch (chemistry) {
            case ICR, IMR, INR, NCR -> new Guard(tripA, tripS, ohm, 2.5, 4.28);
            case IFR -> new Guard(tripA, tripS, ohm, 2.0, 3.75);
        };
    }
}
