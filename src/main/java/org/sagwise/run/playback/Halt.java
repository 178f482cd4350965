package org.sagwise.run.playback;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunEvent;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunState;

/**
 * Why the clock stopped.
 *
 * @param bench the bench on which it happened
 * @param events what happened at that moment; may be empty at the end of a run-down
 * @param end what ended a run-down; empty if the clock was going by itself
 * @param state the state then
 */
public record Halt(Bench bench, List<RunEvent> events, Optional<RunEnd> end, RunState state) {

    /** A protective layer that breaks down heats the cell by itself: from here on nobody stays. */
    private static final Set<Kind> GRAVE = EnumSet.of(Kind.VENTED, Kind.INTERRUPTED, Kind.LAYER_BREAKDOWN);

    /** Moments closer than this are the same, s. */
    private static final double SAME_S = 1e-6;

    public Halt {
        events = List.copyOf(events);
    }

    /** Why the clock stopped in a little time. */
    public static Halt in(Bench bench, Slice slice) {
        return new Halt(bench, slice.events(), Optional.empty(), slice.end());
    }

    /** Why a run-down ended. */
    public static Halt atEnd(Bench bench, RunResult result) {
        double endS = result.last().timeS();
        List<RunEvent> lastly = result.events().stream()
                .filter(event -> event.atS() >= endS - SAME_S)
                .toList();
        return new Halt(bench, lastly, Optional.of(result.end()), result.last());
    }

    /** Whether a cell vents, or may: people must leave. */
    public boolean isGrave() {
        return events.stream().map(RunEvent::kind).anyMatch(GRAVE::contains);
    }
}
