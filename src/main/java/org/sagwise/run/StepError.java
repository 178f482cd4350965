package org.sagwise.run;

import org.sagwise.part.CellPolarisation;

/** Collects the errors of one step, each as a multiple of what is allowed. */
final class StepError {

    /** Error of a voltage that one step may make, V. */
    private static final double VOLT = 5e-5;

    /** Error of a cell's mean current over a second or longer, as a share of it. */
    private static final double CURRENT_SHARE = 3e-4;

    /** A current so small that its error does not matter, A. */
    private static final double SMALL_A = 1e-3;

    /** Error of a cell's temperature that one step may make, K. */
    private static final double CELL_K = 0.02;

    /** Error of a coil's or wire's temperature that one step may make, K. */
    private static final double HOT_K = 0.5;

    /** The same while no current flows, K. */
    private static final double IDLE_K = 4;

    /** Largest change of charge in one step: the curve bends. */
    private static final double CHARGE = 0.02;

    private double worst;

    double worst() {
        return worst;
    }

    private void add(double ratio) {
        // NaN must count as too large, not as nothing.
        worst = ratio <= worst ? worst : Double.isNaN(ratio) ? Double.POSITIVE_INFINITY : ratio;
    }

    /** The errors of a cell: current, charge, slow sag, temperature. */
    void cell(
            CellModel cell,
            double[] next,
            StateLayout layout,
            int k,
            double meanA,
            Instant now,
            Instant end,
            double seconds,
            CellStep step) {
        double before = now.cellA[k];
        double after = end.cellA[k];
        // The mean of a current that bends lies a third of the way from the middle to the chord.
        double bentA = Math.abs(meanA - 0.5 * (before + after)) / 3;
        add(bentA * seconds / (CURRENT_SHARE * Math.abs(meanA) + SMALL_A) / Math.max(1, seconds));
        double chargeV = bentA * seconds / cell.capacityAs * cell.curve.slope(next[layout.cell(k, 0)]);
        add(Math.abs(chargeV) / VOLT);
        CellPolarisation quick = step.quick;
        CellPolarisation slow = step.slow;
        double bentOhm =
                quick.ohm() * bent(seconds / quick.timeConstantS()) + slow.ohm() * bent(seconds / slow.timeConstantS());
        add(bentOhm * Math.abs(after - before) / VOLT);
        double slowOhm = quick.ohm() + slow.ohm();
        double heatW = bentA * 2 * Math.abs(meanA) * (step.ohmicOhm + slowOhm);
        add(heatW * seconds / cell.heatCapacityJPerK / CELL_K);
        add(Math.abs(meanA) * seconds / cell.capacityAs / CHARGE);
    }

    /** How much of a change of current is not yet, or no longer, in the mean of a slow voltage. */
    private static double bent(double z) {
        return Math.min(0.5, z * z / 12);
    }

    /**
     * The error of a coil's or wire's temperature, K. While no current flows it matters only for
     * how warm the next press finds it.
     */
    void hot(double kelvin, double currentA) {
        add(Math.abs(kelvin) / (Math.abs(currentA) < SMALL_A ? IDLE_K : HOT_K));
    }
}
