package org.sagwise.run.playback;

import java.util.List;
import java.util.Optional;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent;

/** What the clock tells in passing. */
public sealed interface Remark {

    Remark NOTHING = new Nothing();
    Remark STARTED_OVER = new StartedOver();

    /** There is nothing to tell. */
    record Nothing() implements Remark {}

    /** The circuit was changed, so that time is back at the start. */
    record StartedOver() implements Remark {}

    /** Something happened. */
    record Event(Bench bench, RunEvent event) implements Remark {}

    /** The last thing that happened in a little time. */
    static Optional<Remark> in(Bench bench, Slice slice) {
        List<RunEvent> events = slice.events();
        return events.isEmpty() ? Optional.empty() : Optional.of(new Event(bench, events.get(events.size() - 1)));
    }
}
