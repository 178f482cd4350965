package org.sagwise.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.sagwise.errand.Errand;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Press;

/** One segment of time with the button held or let go, step by step. */
final class Segment {

    /** How closely events are found, s. */
    static final double EVENT_S = 1e-3;

    /** A step this short is taken whatever its error: events are no finer. */
    private static final double SHORTEST_S = 1e-3;

    private static final double LONGEST_S = 600;

    /** A share of a step by which the next may at most be longer. */
    private static final double MOST_GROWTH = 4;

    private static final double LEAST_SHRINK = 0.2;

    /** The error of a step grows with the third power of its length; a little less is asked. */
    private static final double CAUTIOUS = 0.9;

    private final Stepper stepper;
    private final List<EventDetector> detectors;
    private final Set<Kind> stopAt;
    private final List<RunEvent> events = new ArrayList<>();
    private final List<RunState> passed = new ArrayList<>();
    private double[] x;
    private BitSet marks;
    private Instant now;
    private double timeS;
    private Press press;
    private int presses;
    private StepSize stepSize;
    private boolean justTurned;
    private boolean stopped;
    private int looked;
    private Wiring wiring;

    Segment(Stepper stepper, RunState state, Set<Kind> stopAt) {
        this.stopAt = stopAt;
        this.stepper = stepper;
        detectors = stepper.detectors();
        x = state.x;
        marks = state.marks;
        now = state.now;
        timeS = state.timeS();
        press = state.press();
        presses = state.presses();
        stepSize = state.stepSize;
    }

    Advance go(Press wanted, double seconds) {
        boolean turns = wanted != press;
        if (turns) {
            turn(wanted);
        }
        wiring = stepper.wiring(state());
        happenNow();
        if (turns || !events.isEmpty()) {
            passed.add(state());
        }
        double endS = timeS + seconds;
        while (timeS < endS && !isOver() && !stepper.isSpent()) {
            Errand.heed();
            step(endS);
        }
        boolean told = !passed.isEmpty() && passed.get(passed.size() - 1).isAt(timeS, x, now);
        RunState last = told ? passed.get(passed.size() - 1) : state();
        if (!told) {
            passed.add(last);
        }
        return new Advance(last, events, passed);
    }

    private RunState state() {
        return new RunState(stepper.model(), detectors, timeS, press, presses, x, marks, now, stepSize);
    }

    private boolean isOver() {
        return !now.solved || marks.intersects(stepper.ending()) || stopped();
    }

    /** Looks only at what has happened since it was asked last. */
    private boolean stopped() {
        while (!stopped && looked < events.size()) {
            stopped = stopAt.contains(events.get(looked++).kind());
        }
        return stopped;
    }

    private void turn(Press wanted) {
        press = wanted;
        stepSize = stepSize.turned(press);
        justTurned = true;
        if (press.isHeld() && stepper.hasSwitch()) {
            presses++;
        }
        if (press == Press.RELEASED && marks.intersects(stepper.untilReleased())) {
            release();
        }
        rewire();
    }

    private void release() {
        BitSet undone = (BitSet) marks.clone();
        undone.and(stepper.untilReleased());
        marks = (BitSet) marks.clone();
        marks.andNot(undone);
        x = x.clone();
        undone.stream()
                .mapToObj(detectors::get)
                .filter(detector -> detector.kind() == Kind.GUARD_CURRENT)
                .forEach(this::closeGuard);
    }

    private void closeGuard(EventDetector guard) {
        x[stepper.model().layout.cell(guard.place(), StateLayout.OVER_CURRENT_S)] = 0;
        events.add(new RunEvent(timeS, guard.part(), Kind.GUARD_CLOSED, Double.NaN, Double.NaN));
    }

    private void rewire() {
        wiring = stepper.wiring(state());
        now = stepper.integrator.instant(wiring, x);
        x = x.clone();
        stepper.integrator.note(x, now);
    }

    /** Lets happen what has come to it; each may bring about the next. */
    private void happenNow() {
        boolean news = true;
        while (news && now.solved) {
            BitSet fresh = happening(x, now);
            news = !fresh.isEmpty();
            if (news) {
                happen(fresh);
            }
        }
        if (!now.solved && !stepperSaidSo()) {
            events.add(new RunEvent(timeS, "", Kind.UNSOLVABLE, Double.NaN, Double.NaN));
        }
    }

    private boolean stepperSaidSo() {
        return !events.isEmpty() && events.get(events.size() - 1).kind() == Kind.UNSOLVABLE;
    }

    private void happen(BitSet fresh) {
        passed.add(state());
        fresh.stream().mapToObj(detectors::get).forEach(detector -> events.add(detector.event(timeS, x, now, press)));
        marks = (BitSet) marks.clone();
        marks.or(fresh);
        fresh.stream().mapToObj(detectors::get).forEach(this::undo);
        fresh.stream().mapToObj(detectors::get).forEach(this::loseFailedPtc);
        boolean changes = fresh.stream()
                .mapToObj(i -> detectors.get(i).kind())
                .anyMatch(kind -> kind == Kind.CELL_PTC_FAILED || Kind.OPENING.contains(kind));
        if (changes) {
            rewire();
        }
    }

    /** One that burns through chokes nothing any more. */
    private void loseFailedPtc(EventDetector done) {
        if (done.kind() == Kind.CELL_PTC_FAILED) {
            x = x.clone();
            x[stepper.model().layout.cell(done.place(), StateLayout.PTC_C)] = StateLayout.NO_PTC_C;
        }
    }

    private void undo(EventDetector done) {
        for (int i = 0; i < detectors.size(); i++) {
            EventDetector other = detectors.get(i);
            if (done.kind().undoes().filter(other.kind()::equals).isPresent()
                    && other.part().equals(done.part())) {
                marks.clear(i);
            }
        }
    }

    private BitSet happening(double[] numbers, Instant instant) {
        BitSet happening = new BitSet();
        for (int i = 0; i < detectors.size(); i++) {
            if (!marks.get(i) && detectors.get(i).happens(numbers, instant, press)) {
                happening.set(i);
            }
        }
        return happening;
    }

    private boolean anyHappening(Trial trial) {
        if (!trial.solved()) {
            return true;
        }
        for (int i = 0; i < detectors.size(); i++) {
            if (!marks.get(i) && detectors.get(i).happens(trial.x(), trial.end(), press)) {
                return true;
            }
        }
        return false;
    }

    private void step(double endS) {
        double left = endS - timeS;
        double seconds = Math.min(left, Math.min(stepSize.nextS(), LONGEST_S));
        if (left - seconds < 0.1 * seconds) {
            seconds = left;
        }
        Trial trial = trial(seconds);
        double error = trial.error() / stepper.fineness();
        while (!(error <= 1) && seconds > SHORTEST_S) {
            seconds = Math.max(SHORTEST_S, seconds * factor(error));
            trial = trial(seconds);
            error = trial.error() / stepper.fineness();
        }
        double next = seconds * factor(error);
        if (anyHappening(trial)) {
            seconds = firstHappening(seconds);
            trial = trial(seconds);
        }
        take(trial, seconds >= left ? endS : timeS + seconds, seconds);
        learn(Math.min(LONGEST_S, Math.max(SHORTEST_S, next)), seconds < left);
        happenNow();
        passed.add(state());
    }

    private void learn(double next, boolean goesOn) {
        if (justTurned) {
            stepSize = stepSize.first(press, next);
            justTurned = false;
        } else if (goesOn || next > stepSize.nextS()) {
            // A step that was cut short by the end says little about how long the next may be.
            stepSize = stepSize.next(next);
        }
    }

    private static double factor(double error) {
        if (!Double.isFinite(error)) {
            return LEAST_SHRINK;
        }
        double wanted = CAUTIOUS / Math.cbrt(Math.max(error, 1e-9));
        return Math.max(LEAST_SHRINK, Math.min(MOST_GROWTH, wanted));
    }

    private Trial trial(double seconds) {
        return stepper.integrator.step(wiring, x, now, seconds);
    }

    /** The shortest step within which something happens, found by halving. */
    private double firstHappening(double seconds) {
        double before = 0;
        double after = seconds;
        while (after - before > EVENT_S) {
            double middle = 0.5 * (before + after);
            if (anyHappening(trial(middle))) {
                after = middle;
            } else {
                before = middle;
            }
        }
        return after;
    }

    private void take(Trial trial, double untilS, double seconds) {
        x = trial.x();
        if (press.isHeld()) {
            x[stepper.model().layout.firedS] += seconds;
        }
        now = trial.end();
        timeS = untilS;
    }
}
