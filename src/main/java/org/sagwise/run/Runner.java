package org.sagwise.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Press;

/** Runs a plan from beginning to end. */
public final class Runner {

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
    private final Stepper stepper;
    private final Set<Kind> stopAt;
    private final List<RunEvent> events = new ArrayList<>();
    private final TraceKeeper trace = new TraceKeeper();
    private final Steadiness steadiness = new Steadiness();
    private RunState state;
    private RunEnd end;

    private Runner(Bench bench, RunPlan plan, RunSettings settings, RunProgress progress, double mostEffort) {
        this.bench = bench;
        this.plan = plan;
        this.settings = settings;
        this.progress = progress;
        stepper = new Stepper(bench, settings);
        stepper.giveUpAfter(mostEffort);
        stopAt = plan.untilS().isPresent() ? Kind.FINAL : RunEnd.stopping();
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
        return new Runner(bench, plan, settings, progress, mostEffort).run();
    }

    private RunResult run() {
        state = stepper.start();
        trace.begin(state);
        while (end == null) {
            boolean holds = !stepper.hasSwitch() || Double.isInfinite(plan.onS());
            go(Press.HELD, holds ? STRETCH_S : plan.onS());
            if (end == null && !holds) {
                go(Press.RELEASED, plan.offS());
            }
            if (end == null && plan.untilS().isEmpty() && steadiness.isSteadyAt(state)) {
                end = RunEnd.STEADY;
            }
            if (end == null && !progress.goesOn(state)) {
                end = RunEnd.CANCELLED;
            }
        }
        return new RunResult(end, state, events, trace.trace(bench, settings));
    }

    private void go(Press press, double seconds) {
        double untilS = plan.untilS().orElse(LONGEST_S);
        boolean last = state.timeS() + seconds >= untilS;
        double duration = last ? untilS - state.timeS() : seconds;
        if (duration > 0) {
            Advance advance = stepper.advance(state, press, duration, stopAt);
            events.addAll(advance.events());
            trace.add(state.timeS(), press, advance);
            state = advance.state();
            end = ending(advance.events(), press);
        }
        if (end == null && stepper.isSpent()) {
            end = RunEnd.TOO_LONG;
        }
        if (end == null && last) {
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
