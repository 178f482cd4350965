package org.sagwise.run;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Press;

/**
 * Keeps the course of a run without letting it grow for ever: once it holds too many states, every
 * second press is dropped as a whole, so that what is left keeps its shape. Presses in which
 * something happened stay.
 */
final class TraceKeeper {

    private static final int MOST_STATES = 8000;

    private final List<RunState> states = new ArrayList<>();
    private final List<Trace.Turn> turns = new ArrayList<>();
    private final Set<Integer> eventful = new HashSet<>();
    private int stride = 1;

    void begin(RunState start) {
        states.add(start);
    }

    void add(double fromS, Press press, Advance advance) {
        if (turns.isEmpty() || turns.get(turns.size() - 1).press() != press) {
            turns.add(new Trace.Turn(fromS, press));
        }
        if (!advance.events().isEmpty()) {
            eventful.add(advance.state().presses());
        }
        if (keeps(advance.state())) {
            states.addAll(advance.passed());
        }
        if (states.size() > MOST_STATES && stride < 1 << 20) {
            stride *= 2;
            RunState first = states.get(0);
            states.removeIf(state -> state != first && !keeps(state));
        }
    }

    private boolean keeps(RunState state) {
        return state.presses() % stride == 0 || eventful.contains(state.presses());
    }

    Trace trace(Bench bench, RunSettings settings) {
        return new Trace(bench, settings, states, turns);
    }
}
