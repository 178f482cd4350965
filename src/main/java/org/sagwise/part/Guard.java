package org.sagwise.part;

/**
 * The small circuit board inside a protected cell.
 *
 * @param tripA current above which it opens (A), above 0
 * @param tripS how long the current must last until it opens (s), 0 or more
 * @param ohm resistance that it adds in series with the cell (Ω), 0 or more
 * @param underVoltageV cell voltage below which it opens (V)
 * @param overVoltageV cell voltage above which it opens (V), above the lower one
 */
public record Guard(
        double tripA, double tripS, double ohm, double underVoltageV, double overVoltageV) {

    /** 2.5 V: usual for the 4.2 V kinds, from memory, no source at hand. */
    public static final double USUAL_UNDER_VOLTAGE_V = 2.5;

    /** 4.28 V: usual for the 4.2 V kinds, from memory, no source at hand. */
    public static final double USUAL_OVER_VOLTAGE_V = 4.28;

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

    /** A guard with the usual voltage limits of the 4.2 V kinds. */
    public static Guard usual(double tripA, double tripS, double ohm) {
        return new Guard(tripA, tripS, ohm, USUAL_UNDER_VOLTAGE_V, USUAL_OVER_VOLTAGE_V);
    }
}
