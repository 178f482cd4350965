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
record Pace(double nextS, double heldFirstS, double releasedFirstS) {

    static Pace start(double seconds) {
        return new Pace(seconds, seconds, seconds);
    }

    /** The pace after the button has turned. */
    Pace turned(Press press) {
        double first = press.isHeld() ? heldFirstS : releasedFirstS;
        return new Pace(first, heldFirstS, releasedFirstS);
    }

    Pace next(double seconds) {
        return new Pace(seconds, heldFirstS, releasedFirstS);
    }

    /** What the first step after a turn has taught. */
    Pace first(Press press, double seconds) {
        return press.isHeld() ? new Pace(seconds, seconds, releasedFirstS) : new Pace(seconds, heldFirstS, seconds);
    }
}
