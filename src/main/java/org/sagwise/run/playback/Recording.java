package org.sagwise.run.playback;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.sagwise.reading.Bench;
import org.sagwise.run.Advance;
import org.sagwise.run.RunSettings;
import org.sagwise.run.RunState;
import org.sagwise.run.Trace;
import org.sagwise.scenario.Press;

/**
 * What the clock has gone through so far. It stays small: when it holds too many states, every
 * second one is dropped, but none at which the button turned or something happened.
 */
final class Recording {

    private static final int MOST_STATES = 6000;

    /** Moments closer than this are the same, s. */
    private static final double SAME_S = 1e-9;

    private final List<RunState> states = new ArrayList<>();
    private final List<Trace.Turn> turns = new ArrayList<>();
    private final Set<RunState> marked = Collections.newSetFromMap(new IdentityHashMap<>());

    private int thinAbove = MOST_STATES;

    /** A recording that begins with a state. */
    Recording(RunState first) {
        states.add(first);
        marked.add(first);
    }

    /** The recording of a run; all that was kept of it is kept. */
    Recording(Trace trace) {
        states.addAll(trace.states());
        turns.addAll(trace.turns());
        marked.addAll(states);
    }

    /** Adds what a stretch of time brought, from the last state on. */
    void add(Press press, Advance advance) {
        RunState before = last();
        if (before.press() != press) {
            turns.add(new Trace.Turn(before.timeS(), press));
            marked.add(before);
            marked.add(advance.passed().get(0));
        }
        states.addAll(advance.passed());
        if (!advance.events().isEmpty()) {
            marked.add(advance.state());
        }
        if (states.size() > thinAbove) {
            thin();
        }
    }

    private void thin() {
        List<RunState> kept = new ArrayList<>(states.size());
        boolean drops = false;
        for (RunState state : states) {
            boolean fixed = state == last() || marked.contains(state);
            if (fixed || !drops) {
                kept.add(state);
            }
            drops = !fixed && !drops;
        }
        states.clear();
        states.addAll(kept);
        thinAbove = Math.max(MOST_STATES, states.size() + MOST_STATES / 2);
    }

    /** Forgets what came after a moment to which the clock was turned back, and goes on there. */
    void goOnFrom(RunState state) {
        if (state == last()) {
            return;
        }
        double atS = state.timeS();
        states.removeIf(each -> each.timeS() > atS);
        turns.removeIf(turn -> turn.atS() > atS);
        marked.removeIf(each -> each.timeS() > atS);
        if (states.isEmpty() || last() != state) {
            states.add(state);
        }
    }

    RunState last() {
        return states.get(states.size() - 1);
    }

    /** When the button was pressed for the last time before this moment. */
    OptionalDouble pressBefore(double timeS) {
        return presses().filter(atS -> atS < timeS - SAME_S).max();
    }

    /** When the button is pressed next after this moment. */
    OptionalDouble pressAfter(double timeS) {
        return presses().filter(atS -> atS > timeS + SAME_S).min();
    }

    private DoubleStream presses() {
        return turns.stream().filter(turn -> turn.press().isHeld()).mapToDouble(Trace.Turn::atS);
    }

    Trace trace(Bench bench) {
        return new Trace(bench, RunSettings.USUAL, states, turns);
    }
}
