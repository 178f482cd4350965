package org.sagwise.run.playback;

import org.sagwise.run.RunState;
import org.sagwise.scenario.Press;

/**
 * What the clock shows.
 *
 * @param timeS the moment that is shown, s from the start
 * @param endS the latest moment that was computed, s
 * @param presses how often the button has been pressed by then
 * @param press whether it was held at that moment
 * @param isOver whether nothing goes on beyond this moment: a cell has vented, or may have
 */
public record Now(double timeS, double endS, int presses, Press press, boolean isOver) {

    /** Before time was set going. */
    public static final Now START = new Now(0, 0, 0, Press.RELEASED, false);

    static Now of(RunState state, double endS) {
        return new Now(state.timeS(), endS, state.presses(), state.press(), state.isOver());
    }

    /** Whether a moment before the latest one is shown. */
    public boolean isTurnedBack() {
        return timeS < endS;
    }
}
