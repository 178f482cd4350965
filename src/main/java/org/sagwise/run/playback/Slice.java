package org.sagwise.run.playback;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.run.Advance;
import org.sagwise.run.RunEvent;
import org.sagwise.run.RunState;
import org.sagwise.run.Stepper;
import org.sagwise.run.Trace;
import org.sagwise.scenario.Press;

/**
 * A little time, computed in one go.
 *
 * @param legs what its stretches brought, in order
 */
public record Slice(List<Leg> legs) {

    /** One stretch and what it brought. */
    record Leg(Press press, Advance advance) {}

    /**
     * Goes on from a state, and stops early where something happens that stops the clock.
     *
     * @param stretches at least one
     */
    static Slice of(Stepper stepper, RunState from, List<Owed.Stretch> stretches) {
        List<Leg> legs = new ArrayList<>();
        RunState state = from;
        for (Owed.Stretch stretch : stretches) {
            Advance advance = stepper.advance(state, stretch.press(), stretch.seconds(), Halts.KINDS);
            legs.add(new Leg(stretch.press(), advance));
            state = advance.state();
            if (state.isOver() || isHalted(advance)) {
                break;
            }
        }
        return new Slice(legs);
    }

    private static boolean isHalted(Advance advance) {
        return advance.events().stream().map(RunEvent::kind).anyMatch(Halts::isHalt);
    }

    /**
     * Every turn of the button up to its end.
     *
     * @param before the turns before it
     * @param from the state before it
     */
    public List<Trace.Turn> turns(List<Trace.Turn> before, RunState from) {
        List<Trace.Turn> turns = new ArrayList<>(before);
        RunState last = from;
        for (Leg leg : legs) {
            if (last.press() != leg.press()) {
                turns.add(new Trace.Turn(last.timeS(), leg.press()));
            }
            last = leg.advance().state();
        }
        return turns;
    }

    public RunState end() {
        return legs.get(legs.size() - 1).advance().state();
    }

    List<RunEvent> events() {
        return legs.stream().flatMap(leg -> leg.advance().events().stream()).toList();
    }

    public boolean isHalted() {
        return end().isOver() || legs.stream().map(Leg::advance).anyMatch(Slice::isHalted);
    }
}
