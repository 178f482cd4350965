package org.sagwise.run.playback;

import java.util.List;
import java.util.Optional;
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

    /** The last thing that happened in a little time. */
    static Optional<Aside> in(Bench bench, Slice slice) {
        List<RunEvent> events = slice.events();
        return events.isEmpty() ? Optional.empty() : Optional.of(new Event(bench, events.get(events.size() - 1)));
    }
}
