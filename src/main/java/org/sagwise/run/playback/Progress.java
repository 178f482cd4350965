package org.sagwise.run.playback;

import org.sagwise.run.CellMoment;
import org.sagwise.run.RunState;

/**
 * How far a run-down has come.
 *
 * @param timeS time on the bench, s
 * @param presses how often the button has been pressed
 * @param share share of the emptiest cell's charge that is used up, 0 to 1; NaN if that says
 *     nothing
 */
public record Progress(double timeS, int presses, double share) {

    public static final Progress START = new Progress(0, 0, Double.NaN);

    /**
     * @param startCharge charge of the emptiest cell at the start
     */
    public static Progress of(RunState state, double startCharge) {
        double used = 1 - emptiest(state) / startCharge;
        double share = startCharge > 0 && used >= 0 ? Math.min(1, used) : Double.NaN;
        return new Progress(state.timeS(), state.presses(), share);
    }

    public static double emptiest(RunState state) {
        return state.cells().stream().mapToDouble(CellMoment::charge).min().orElse(0);
    }
}
