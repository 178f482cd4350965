package org.sagwise.run;

import java.util.List;

/**
 * What came of a run.
 *
 * @param end what ended it
 * @param last the state at its end
 * @param events what happened, in order of time
 * @param trace its course
 */
public record RunResult(RunEnd end, RunState last, List<RunEvent> events, Trace trace) {

    public RunResult {
        events = List.copyOf(events);
    }

    /** Events of one kind, in order of time. */
    public List<RunEvent> events(RunEvent.Kind kind) {
        return events.stream().filter(event -> event.kind() == kind).toList();
    }
}
