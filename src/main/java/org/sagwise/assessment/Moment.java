package org.sagwise.assessment;

import org.sagwise.scenario.Press;

/**
 * A moment of a bench, as exports show it.
 *
 * @param assessment the bench at this moment
 * @param atS how long after the start, s; 0 at the start
 */
public record Moment(Assessment assessment, double atS) {

    public Moment {
        if (!(atS >= 0)) {
            throw new IllegalArgumentException("before the start: " + atS);
        }
    }

    /** The instant at which a bench begins, whatever moment the assessment is of. */
    public static Moment start(Assessment assessment) {
        return new Moment(
                assessment.at(assessment.bench().start(), assessment.readings().press()), 0);
    }

    public boolean isStart() {
        return atS == 0;
    }

    /** The same moment with the button held or let go. */
    public Moment with(Press press) {
        return new Moment(assessment.with(press), atS);
    }
}
