package org.sagwise.part;

/**
 * A slow part of sag: a voltage that builds up under load and fades at rest, as in a resistor with
 * a capacitor beside it (Thévenin model). A cell has two of them, with the time constants of a
 * small polymer cell at half charge, 33 s and 223 s (M. Chen, G. A. Rincón-Mora, IEEE Trans. Energy
 * Convers. 21(2), 2006).
 *
 * @param ohm its resistance (Ω), 0 or more
 * @param timeConstantS time in which 63 % of a change is made (s), above 0
 */
public record CellPolarisation(double ohm, double timeConstantS) {

    /** Time constant of the quicker one (s). */
    public static final double QUICK_S = 33;

    /** Time constant of the slower one (s). */
    public static final double SLOW_S = 223;

    public CellPolarisation {
        Require.notNegative(ohm, "ohm");
        Require.positive(timeConstantS, "timeConstantS");
    }

    /** The same with its resistance multiplied. */
    public CellPolarisation times(double factor) {
        return factor == 1 ? this : new CellPolarisation(factor * ohm, timeConstantS);
    }

    /**
     * voltage (V) after {@code durationS} seconds of constant current: exact, however long the step.
     *
     * @param volts voltage at the start (V)
     * @param currentA current (A), positive when the cell discharges
     * @param durationS duration (s), 0 or more
     */
    public double after(double volts, double currentA, double durationS) {
        double settled = currentA * ohm;
        return settled + (volts - settled) * Math.exp(-durationS / timeConstantS);
    }

    /**
     * Mean of voltage (V) over {@code durationS} seconds of constant current: exact, however long.
     *
     * @param volts voltage at the start (V)
     * @param currentA current (A), positive when the cell discharges
     * @param durationS duration (s), above 0
     */
    public double mean(double volts, double currentA, double durationS) {
        double settled = currentA * ohm;
        return settled + (volts - settled) * meanLeft(durationS);
    }

    /**
     * Mean over {@code durationS} seconds (above 0) of the share of a voltage that has not faded yet.
     */
    public double meanLeft(double durationS) {
        double ratio = durationS / timeConstantS;
        return -Math.expm1(-ratio) / ratio;
    }
}
