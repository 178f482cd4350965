package org.sagwise.run;

import org.sagwise.scenario.Press;

/**
 * Looks out for one event. It happens once the gap to it is negative.
 *
 * @param kind what happens
 * @param part whose event it is, as the event will name it
 * @param place place of the part among its kind in the model
 * @param trigger what must pass a limit; NaN while it does not apply
 * @param limit the limit, in the unit of the trigger
 * @param side on which side of the limit it happens
 * @param shown number to tell people
 * @param shownLimit limit to tell people
 */
record EventDetector(
        RunEvent.Kind kind,
        String part,
        int place,
        Sight trigger,
        double limit,
        Side side,
        Sight shown,
        double shownLimit) {

    /** Where it happens. */
    enum Side {
        ABOVE,
        BELOW
    }

    /** A number seen at one moment. */
    interface Sight {
        double of(double[] x, Instant now, Press press);
    }

    /** A detector whose trigger is also what people are told. */
    static EventDetector on(RunEvent.Kind kind, String part, int place, Sight trigger, double limit, Side side) {
        return new EventDetector(kind, part, place, trigger, limit, side, trigger, limit);
    }

    /** Whether it happens at this moment. */
    boolean happens(double[] x, Instant now, Press press) {
        double value = trigger.of(x, now, press);
        return side == Side.ABOVE ? value > limit : value < limit;
    }

    /** The event as it is told. */
    RunEvent event(double atS, double[] x, Instant now, Press press) {
        return new RunEvent(atS, part, kind, shown.of(x, now, press), shownLimit);
    }
}
