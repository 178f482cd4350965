package org.sagwise.run;

import org.sagwise.scenario.Press;

/**
 * Lengths of steps that are expected to be right: learnt from the steps before, so that few steps
 * have to be taken twice.
 *
 * @param nextS of the next step
 * @param heldFirstS of the first step after the button was pressed
 * @param releasedFirstS of the first step after the button was let go
 */
record StepSize(double nextS, double heldFirstS, double releasedFirstS) {

    static StepSize start(double seconds) {
        return new StepSize(seconds, seconds, seconds);
    }

    /** The stepSize after the button has turned. */
    StepSize turned(Press press) {
        double first = press.isHeld() ? heldFirstS : releasedFirstS;
        return new StepSize(first, heldFirstS, releasedFirstS);
    }

    StepSize next(double seconds) {
        return new StepSize(seconds, heldFirstS, releasedFirstS);
    }

    /** What the first step after a turn has taught. */
    StepSize first(Press press, double seconds) {
        return press.isHeld()
                ? new StepSize(seconds, seconds, releasedFirstS)
                : new StepSize(seconds, heldFirstS, seconds);
    }
}
