package org.sagwise.run.playback;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.reading.Bench;
import org.sagwise.run.Advance;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunSettings;
import org.sagwise.run.RunState;
import org.sagwise.run.Runner;
import org.sagwise.run.Stepper;
import org.sagwise.run.Trace;
import org.sagwise.scenario.Press;

/**
 * A bench that goes through the same presses as another, at the same moments. It stays as it is
 * once it has come to its own end, so that nothing is driven below its cut-off. Belongs to one
 * thread at a time.
 */
public final class Twin {

    /** What a bench does not go beyond here. */
    private static final Set<Kind> ENDS = EnumSet.of(Kind.CUTOFF, Kind.VENTED, Kind.INTERRUPTED, Kind.UNSOLVABLE);

    /** Moments closer than this are the same, s. */
    private static final double SAME_S = 1e-6;

    private final Bench bench;
    private final Stepper stepper;
    private final Recording recording;
    private List<Trace.Turn> known = List.of();
    private Optional<Ending> ending = Optional.empty();
    private Ending ahead;
    private RunPlan aheadBy;

    public Twin(Bench bench) {
        this.bench = bench;
        stepper = new Stepper(bench, RunSettings.USUAL);
        recording = new Recording(stepper.start());
    }

    public static boolean isEnd(Kind kind) {
        return ENDS.contains(kind);
    }

    /** When it came to its end, as far as it has gone. */
    public Optional<Ending> ending() {
        return ending;
    }

    /**
     * How it is at a moment.
     *
     * @param turns every turn of the other's button
     * @param timeS the moment, s
     * @param endS the latest moment of the other, s
     */
    public RunState at(List<Trace.Turn> turns, double timeS, double endS) {
        double agreedS = agreedUntil(turns);
        if (recording.last().timeS() > agreedS) {
            recording.goOnFrom(recording.trace(bench).stateAt(agreedS));
            ending = ending.filter(end -> end.timeS() <= agreedS);
        }
        known = turns;
        while (ending.isEmpty() && recording.last().timeS() < endS - SAME_S) {
            goOn(endS);
        }
        return timeS < recording.last().timeS() - SAME_S
                ? recording.trace(bench).stateAt(timeS)
                : recording.last();
    }

    /** Until when the presses are those that it went through. */
    private double agreedUntil(List<Trace.Turn> turns) {
        int same = 0;
        while (same < Math.min(turns.size(), known.size()) && turns.get(same).equals(known.get(same))) {
            same++;
        }
        double mine = same < known.size() ? known.get(same).atS() : Double.POSITIVE_INFINITY;
        double theirs = same < turns.size() ? turns.get(same).atS() : Double.POSITIVE_INFINITY;
        return Math.min(mine, theirs);
    }

    /** Goes on to the next turn of the button, or to a moment before it. */
    private void goOn(double endS) {
        RunState from = recording.last();
        int made = 0;
        while (made < known.size() && known.get(made).atS() <= from.timeS() + SAME_S) {
            made++;
        }
        double untilS = made < known.size() ? Math.min(known.get(made).atS(), endS) : endS;
        step(made == 0 ? Press.RELEASED : known.get(made - 1).press(), untilS - from.timeS());
    }

    private void step(Press press, double seconds) {
        Press due = stepper.hasSwitch() ? press : Press.HELD;
        Advance advance = stepper.advance(recording.last(), due, seconds, ENDS);
        recording.add(due, advance);
        if (advance.state().isOver() || advance.events().stream().anyMatch(it -> isEnd(it.kind()))) {
            ending = Optional.of(Ending.of(advance.state()));
        }
    }

    /** When it comes to its end if it is run down by a plan from its start. */
    public Ending runDown(RunPlan plan) {
        if (ahead == null || !plan.equals(aheadBy)) {
            ahead = Ending.of(Runner.run(bench, plan).last());
            aheadBy = plan;
        }
        return ahead;
    }

    /** When it comes to its end if the button stays held from here on; empty if it never does. */
    public Optional<Ending> held() {
        if (ending.isPresent() || recording.last().press() == Press.RELEASED) {
            return ending;
        }
        Advance on = stepper.advance(recording.last(), Press.HELD, Runner.LONGEST_S, ENDS);
        return on.events().stream().anyMatch(it -> isEnd(it.kind()))
                ? Optional.of(Ending.of(on.state()))
                : Optional.empty();
    }
}
