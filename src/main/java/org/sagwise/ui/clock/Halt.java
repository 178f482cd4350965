package org.sagwise.ui.clock;

import org.sagwise.reading.Bench;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunEvent;
import org.sagwise.run.RunState;

import java.util.List;
import java.util.Optional;

/**
 * Why the clock stopped.
 *
 * @param bench the bench on which it happened
 * @param events what happened at that moment; may be empty at the end of a run-down
 * @param end what ended a run-down; empty if the clock was going by itself
 * @param state the state then
 */
public record Halt(Bench bench, List<RunEvent> events, Optional<RunEnd> end, RunState state) {

    public Halt {
        events = List.copyOf(events);
    }
}
