package org.sagwise.ui.clock;

import org.sagwise.run.playback.Now;
import org.sagwise.run.playback.Timeline;

/** Goes through time in steps: along what was recorded, and on where it ends. Stops the clock. */
public final class ClockSteps {

    /** Steps that people ask for, s. */
    public static final double STEP_S = 1;

    private final ClockModel clock;
    private final Timeline timeline;

    ClockSteps(ClockModel clock, Timeline timeline) {
        this.clock = clock;
        this.timeline = timeline;
    }

    /** Goes back to the start; what was recorded stays. */
    public void toStart() {
        clock.turnTo(0);
    }

    /** Goes a second back. */
    public void back() {
        clock.turnTo(now().timeS() - STEP_S);
    }

    /** Goes a second on: along what was recorded, else with the button as it is held. */
    public void on() {
        if (now().isTurnedBack()) {
            clock.turnTo(now().timeS() + STEP_S);
        } else {
            clock.goOn(STEP_S);
        }
    }

    /** Goes back to the press before this moment. */
    public void pressBack() {
        if (timeline.isBegun()) {
            clock.turnTo(timeline.pressBefore().orElse(0));
        }
    }

    /** Goes on to the next press that was recorded, or to the end. */
    public void pressOn() {
        if (timeline.isBegun()) {
            clock.turnTo(timeline.pressAfter().orElse(now().endS()));
        }
    }

    private Now now() {
        return clock.nowProperty().get();
    }
}
