package org.sagwise.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Press;

/**
 * Runs a plan from beginning to end: at once, or piece by piece for who has one thread alone and other things to do
 * on it meanwhile.
 */
public final class Runner implements Work {

    /** A run that reaches no cut-off is over after a week, s. */
    public static final double LONGEST_S = 7 * 24 * 3600.0;

    /** Less than this counts as no current, A: a voltmeter takes a thousand times less. */
    private static final double NO_CURRENT_A = 1e-3;

    /** A button held for good is held in stretches of this length, s. */
    private static final double STRETCH_S = 600;

    /**
     * Additions and multiplications after which a run is given up: some seconds' worth. Counted and
     * not timed, so that the same bench ends at the same moment on every machine.
     */
    private static final double MOST_EFFORT = 1e10;

    private final Bench bench;
    private final RunPlan plan;
    private final RunSettings settings;
    private final RunProgress progress;
    private final double mostEffort;
    private final double piece;
    private final Stepper stepper;
    private final Set<Kind> stopAt;
    private final List<RunEvent> events = new ArrayList<>();
    private final TraceKeeper trace = new TraceKeeper();
    private final Steadiness steadiness = new Steadiness();
    private RunState state;
    private boolean resting;
    private double leftS;
    private RunEnd end;

    private Runner(
            Bench bench, RunPlan plan, RunSettings settings, RunProgress progress, double mostEffort, double piece) {
        this.bench = bench;
        this.plan = plan;
        this.settings = settings;
        this.progress = progress;
        this.mostEffort = mostEffort;
        this.piece = piece;
        stepper = new Stepper(bench, settings);
        stopAt = plan.untilS().isPresent() ? Kind.FINAL : RunEnd.stopping();
        state = stepper.start();
        trace.begin(state);
    }

    /** Runs a bench by a plan with the usual constants. */
    public static RunResult run(Bench bench, RunPlan plan) {
        return run(bench, plan, RunSettings.USUAL, RunProgress.NONE);
    }

    /** Runs a bench by a plan; the same arguments give the same bits. */
    public static RunResult run(Bench bench, RunPlan plan, RunSettings settings, RunProgress progress) {
        return run(bench, plan, settings, progress, MOST_EFFORT);
    }

    /**
     * Runs a bench by a plan, for those who wait less long than usual.
     *
     * @param mostEffort additions and multiplications after which the run is given up; a usual
     *     machine does some 1e9 of them in a second
     */
    public static RunResult run(
            Bench bench, RunPlan plan, RunSettings settings, RunProgress progress, double mostEffort) {
        Runner runner = new Runner(bench, plan, settings, progress, mostEffort, Double.POSITIVE_INFINITY);
        while (!runner.isOver()) {
            runner.more();
        }
        return runner.result();
    }

    /**
     * A run that is done piece by piece, with the usual constants. It comes to the same bits as one at once, unless a
     * single press takes more than a piece.
     *
     * @param mostEffort additions and multiplications after which the run is given up
     * @param piece so many of them at most are done at a time
     */
    public static Runner begin(Bench bench, RunPlan plan, double mostEffort, double piece) {
        return new Runner(bench, plan, RunSettings.USUAL, RunProgress.NONE, mostEffort, piece);
    }

    @Override
    public boolean isOver() {
        return end != null;
    }

    /** Does a press or a rest, or as much of it as makes a piece. */
    @Override
    public void more() {
        boolean holds = !stepper.hasSwitch() || Double.isInfinite(plan.onS());
        double wholeS = resting ? plan.offS() : holds ? STRETCH_S : plan.onS();
        go(resting ? Press.RELEASED : Press.HELD, leftS > 0 ? leftS : wholeS);
        if (end != null || leftS > 0) {
            return;
        }
        resting = !resting && !holds;
        if (resting) {
            return;
        }
        if (plan.untilS().isEmpty() && steadiness.isSteadyAt(state)) {
            end = RunEnd.STEADY;
        } else if (!progress.goesOn(state)) {
            end = RunEnd.CANCELLED;
        }
    }

    @Override
    public void callOff() {
        if (end == null) {
            end = RunEnd.CANCELLED;
        }
    }

    /** Where it has come to. */
    public RunState state() {
        return state;
    }

    /** What has come of it, once it is over. */
    public RunResult result() {
        return new RunResult(end, state, events, trace.trace(bench, settings));
    }

    private void go(Press press, double seconds) {
        double untilS = plan.untilS().orElse(LONGEST_S);
        boolean last = state.timeS() + seconds >= untilS;
        double duration = last ? untilS - state.timeS() : seconds;
        leftS = 0;
        if (duration > 0) {
            stepper.giveUpAfter(Math.min(mostEffort, stepper.effort() + piece));
            Advance advance = stepper.advance(state, press, duration, stopAt);
            events.addAll(advance.events());
            trace.add(state.timeS(), press, advance);
            leftS = stepper.isSpent()
                    ? state.timeS() + duration - advance.state().timeS()
                    : 0;
            state = advance.state();
            end = ending(advance.events(), press);
        }
        if (end == null && stepper.effort() > mostEffort) {
            end = RunEnd.TOO_LONG;
        }
        if (end == null && last && !(leftS > 0)) {
            end = RunEnd.TIME;
        }
    }

    private RunEnd ending(List<RunEvent> news, Press press) {
        for (RunEvent event : news) {
            if (stopAt.contains(event.kind()) && RunEnd.of(event.kind()) != null) {
                return RunEnd.of(event.kind());
            }
        }
        if (plan.untilS().isPresent()) {
            return null;
        }
        if (state.allChargersDone()) {
            return state.has(Kind.OVERCHARGED) ? RunEnd.OVERCHARGED : RunEnd.CHARGED;
        }
        boolean quiet = press.isHeld() && state.largestCurrentA() < NO_CURRENT_A;
        return quiet ? RunEnd.NO_CURRENT : null;
    }
}
