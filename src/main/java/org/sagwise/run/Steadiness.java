package org.sagwise.run;

/** Notices when a run that waits for a cut-off waits in vain: nothing is used up any more. */
final class Steadiness {

    /** A charge that changes more slowly than this takes a year to run down, share a second. */
    private static final double SLOWEST_PER_S = 3e-8;

    /** So many presses, or stretches of a held button, have to be alike. */
    private static final int ALIKE = 12;

    private double[] before = new double[0];
    private double beforeS;
    private int alike;

    /** Whether the last presses were all alike; to be asked once after each. */
    boolean isSteadyAt(RunState state) {
        double[] charges =
                state.cells().stream().mapToDouble(CellMoment::charge).toArray();
        double slack = SLOWEST_PER_S * (state.timeS() - beforeS);
        boolean still = charges.length == before.length;
        for (int k = 0; k < charges.length && still; k++) {
            still = Math.abs(charges[k] - before[k]) <= slack;
        }
        alike = still ? alike + 1 : 0;
        before = charges;
        beforeS = state.timeS();
        return alike >= ALIKE;
    }
}
