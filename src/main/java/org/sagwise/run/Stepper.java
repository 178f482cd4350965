package org.sagwise.run;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Press;

/**
 * Carries a bench through time. {@link #advance} is a function of its arguments alone: the same
 * state, press and seconds give the same bits. A stepper remembers how the bench is wired for each
 * press it has seen, so it belongs to one thread at a time.
 */
public final class Stepper {

    /**
     * What stands behind the key of a wiring.
     *
     * @param press whether the button is held
     * @param open what has opened
     */
    private record Layout(Press press, BitSet open) {}

    private static final double FIRST_STEP_S = 0.1;

    private final RunModel model;
    private final List<EventDetector> detectors;
    private final BitSet opening = new BitSet();
    private final BitSet untilReleased = new BitSet();
    private final BitSet ending = new BitSet();
    private final Map<Layout, Wiring> wirings = new HashMap<>();
    private final double fineness;
    private double mostEffort = Double.POSITIVE_INFINITY;
    final Integrator integrator;

    /** A stepper for a bench. */
    public Stepper(Bench bench, RunSettings settings) {
        model = new RunModel(bench, settings.spread());
        detectors = EventDetectors.of(model, settings.cutoffV());
        fineness = settings.fineness();
        integrator = new Integrator(model);
        for (int i = 0; i < detectors.size(); i++) {
            opening.set(i, Kind.OPENING.contains(detectors.get(i).kind()));
            untilReleased.set(i, Kind.UNTIL_RELEASED.contains(detectors.get(i).kind()));
            ending.set(i, Kind.FINAL.contains(detectors.get(i).kind()));
        }
    }

    /** The bench as the scenario lays it out, with the button let go. */
    public RunState start() {
        double[] x = StateLayout.start(model);
        BitSet marks = new BitSet();
        for (int i = 0; i < detectors.size(); i++) {
            marks.set(i, detectors.get(i).kind() == Kind.PTC_RESET);
        }
        StepSize stepSize = StepSize.start(FIRST_STEP_S);
        Instant unknown = null;
        RunState blank = new RunState(model, detectors, 0, Press.RELEASED, 0, x, marks, unknown, stepSize);
        Instant now = integrator.instant(wiring(blank), x);
        return new RunState(model, detectors, 0, Press.RELEASED, 0, x, marks, now, stepSize);
    }

    /** Whether the bench has a button that does anything. */
    public boolean hasSwitch() {
        return model.hasSwitch;
    }

    /**
     * Goes on from a state. Stops early where a cell vents or the bench has no answer.
     *
     * @param press whether the button is held from now on
     * @param seconds for how long, 0 or more, finite
     */
    public Advance advance(RunState state, Press press, double seconds) {
        return advance(state, press, seconds, Kind.FINAL);
    }

    /**
     * Goes on from a state, and stops early when something of these kinds happens, or a cell vents.
     *
     * @param press whether the button is held from now on
     * @param seconds for how long at most, 0 or more, finite
     * @param stopAt kinds of events to stop at
     */
    public Advance advance(RunState state, Press press, double seconds, Set<Kind> stopAt) {
        if (!(seconds >= 0) || Double.isInfinite(seconds)) {
            throw new IllegalArgumentException("seconds must be 0 or more but are " + seconds);
        }
        return new Segment(this, state, stopAt).go(press, seconds);
    }

    /** How the bench is wired in a state; only its press, marks and numbers are looked at. */
    Wiring wiring(RunState state) {
        BitSet open = (BitSet) state.marks.clone();
        open.and(opening);
        return wirings.computeIfAbsent(
                new Layout(state.press(), open), layout -> new Wiring(model, state.states(), layout.press()));
    }

    /** Stops advancing, wherever it is, after so many additions and multiplications. */
    void giveUpAfter(double effort) {
        mostEffort = effort;
    }

    /** Whether as much has been spent on solving as may be. */
    boolean isSpent() {
        return effort() > mostEffort;
    }

    /** Additions and multiplications so far. */
    double effort() {
        double effort = 0;
        for (Wiring each : wirings.values()) {
            effort += each.effort();
        }
        return effort;
    }

    RunModel model() {
        return model;
    }

    List<EventDetector> detectors() {
        return detectors;
    }

    /** Detectors of what ends everything. */
    BitSet ending() {
        return ending;
    }

    BitSet untilReleased() {
        return untilReleased;
    }

    double fineness() {
        return fineness;
    }
}
