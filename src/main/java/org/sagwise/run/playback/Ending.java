package org.sagwise.run.playback;

import org.sagwise.run.RunState;

/**
 * When a bench came to its end: a cell at its cut-off, or one that vented.
 *
 * @param timeS when, s from the start
 * @param firedS how long its button had been held by then, s
 */
public record Ending(double timeS, double firedS) {

    public static Ending of(RunState state) {
        return new Ending(state.timeS(), state.firedS());
    }
}
