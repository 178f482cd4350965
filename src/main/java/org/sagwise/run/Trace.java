package org.sagwise.run;

import java.util.List;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Press;

/**
 * The course of a run: states in order of time, and every turn of the button. Immutable. Any moment
 * can be had again, also between the states that were kept.
 */
public final class Trace {

    /**
     * A turn of the button.
     *
     * @param atS when, s from the start
     * @param press whether it is held from then on
     */
    public record Turn(double atS, Press press) {}

    private final Bench bench;
    private final RunSettings settings;
    private final List<RunState> states;
    private final List<Turn> turns;

    /**
     * A course that was recorded.
     *
     * @param states in order of time, at least one
     * @param turns every turn of the button, in order of time
     */
    public Trace(Bench bench, RunSettings settings, List<RunState> states, List<Turn> turns) {
        if (states.isEmpty()) {
            throw new IllegalArgumentException("a course has at least one state");
        }
        this.bench = bench;
        this.settings = settings;
        this.states = List.copyOf(states);
        this.turns = List.copyOf(turns);
    }

    /**
     * States that were kept, in order of time; two at one time where something jumps. Of a long run
     * only some presses are here, each as a whole.
     */
    public List<RunState> states() {
        return states;
    }

    /** Every turn of the button, in order of time. */
    public List<Turn> turns() {
        return turns;
    }

    /** End of the run, s from its start. */
    public double endS() {
        return states.get(states.size() - 1).timeS();
    }

    /**
     * The state at a moment: the last one kept before it, carried on from there. At the very moment
     * of a turn the button has turned.
     *
     * @param timeS s from the start; outside the run counts as its nearest end
     */
    public RunState stateAt(double timeS) {
        double wantedS = Math.max(0, Math.min(timeS, endS()));
        RunState state = lastBefore(wantedS);
        Stepper stepper = new Stepper(bench, settings);
        int made = turnsMadeBy(state.timeS());
        while (state.timeS() < wantedS && !state.isOver()) {
            double untilS = made < turns.size() ? turns.get(made).atS() : Double.MAX_VALUE;
            double seconds = Math.min(wantedS, untilS) - state.timeS();
            state = stepper.advance(state, pressAfter(made), seconds).state();
            made++;
        }
        Press due = pressAfter(turnsMadeBy(wantedS));
        boolean turns = state.press() != due && !state.isOver() && wantedS < endS();
        return turns ? stepper.advance(state, due, 0).state() : state;
    }

    private Press pressAfter(int made) {
        return made == 0 ? states.get(0).press() : turns.get(made - 1).press();
    }

    private RunState lastBefore(double timeS) {
        int low = 0;
        int high = states.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (states.get(middle).timeS() <= timeS) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return states.get(low);
    }

    /** Number of turns that have been made by this time. */
    private int turnsMadeBy(double timeS) {
        int count = 0;
        while (count < turns.size() && turns.get(count).atS() <= timeS) {
            count++;
        }
        return count;
    }
}
