package org.sagwise.run;

import org.sagwise.part.Guard;

/** Counts how long the guard of a protected cell has seen what it does not allow. */
final class GuardTimer {

    private GuardTimer() {}

    /**
     * Counts a step. What is within bounds sets the count back to zero.
     *
     * @param x numbers at the end of the step, with the cell's own beginning at {@code at}
     * @param ampere mean current over the step, A
     */
    static void count(CellModel cell, double[] x, int at, double ampere, double seconds) {
        Guard guard = cell.guard();
        if (guard == null) {
            return;
        }
        double charge = x[at + StateLayout.CHARGE];
        double ohmic = cell.ohmicOhm(x[at + StateLayout.CELL_C], charge);
        double insideV = cell.curve.voltsAt(charge) - StateLayout.slowV(x, at) - ohmic * ampere;
        count(x, at + StateLayout.OVER_CURRENT_S, Math.abs(ampere) > guard.tripA(), seconds);
        count(x, at + StateLayout.LOW_S, ampere > 0 && insideV < guard.underVoltageV(), seconds);
        count(x, at + StateLayout.HIGH_S, ampere < 0 && insideV > guard.overVoltageV(), seconds);
    }

    private static void count(double[] x, int slot, boolean outside, double seconds) {
        x[slot] = outside ? x[slot] + seconds : 0;
    }
}
