package org.sagwise.ui.clock;

import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent;

/** What the clock tells in passing. */
public sealed interface Aside {

    Aside NOTHING = new Nothing();
    Aside STARTED_OVER = new StartedOver();

    /** There is nothing to tell. */
    record Nothing() implements Aside {}

    /** The circuit was changed, so that time is back at the start. */
    record StartedOver() implements Aside {}

    /** Something happened. */
    record Event(Bench bench, RunEvent event) implements Aside {}
}
