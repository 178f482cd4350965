package org.sagwise.network;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds out which one-way elements conduct and which block, while chargers and converters stand as
 * they are. An element agrees with its state if it conducts a current of zero or more, or blocks a
 * voltage of at most its drop: a linear complementarity problem. Since every such element and its
 * leak have a resistance, its matrix is positive definite, so that there is one answer.
 *
 * <p>All that disagree change at once while that leaves fewer that disagree; otherwise the first
 * alone, which ends whatever the order they stand in (Murty, Linear Complementarity, Linear and
 * Nonlinear Programming, 1988, chapter 3; block steps: Júdice and Pires, 1994; both from memory).
 */
final class OneWaySettling {
    /** Part of the largest current that rounding may drive backwards through one that conducts. */
    private static final double SLACK = 1e-10;

    /** Voltage above the drop that rounding may leave across one that blocks (V). */
    private static final double SLACK_V = 1e-9;

    /** Steps of all at once that may bring nothing. */
    private static final int PATIENCE = 3;

    /** Most steps; chains of them are far shorter than the least-index rule's worst case. */
    private static final int MOST_STEPS = 2_000;

    private OneWaySettling() {}

    /** The stance with all one-way elements settled; those that never agree are left as they stood. */
    static Stance settle(Network network, Stance stance) {
        Stance tried = stance;
        int fewest = Integer.MAX_VALUE;
        int patience = PATIENCE;
        for (int step = 0; step < MOST_STEPS; step++) {
            List<Integer> disagreeing = disagreeing(network, tried);
            if (disagreeing.isEmpty()) {
                break;
            }
            boolean better = disagreeing.size() < fewest;
            fewest = Math.min(fewest, disagreeing.size());
            patience = better ? PATIENCE : patience - 1;
            for (int element : patience >= 0 ? disagreeing : disagreeing.subList(0, 1)) {
                tried = tried.with(element, turned(tried.way(element)));
            }
        }
        return tried;
    }

    private static Stance.Way turned(Stance.Way way) {
        return way == Stance.Way.CONDUCTS ? Stance.Way.BLOCKS : Stance.Way.CONDUCTS;
    }

    /** One-way elements whose state does not agree with what it leads to, in ascending order. */
    static List<Integer> disagreeing(Network network, Stance stance) {
        List<Integer> elements = stance.oneWayElements();
        if (elements.isEmpty()) {
            return List.of();
        }
        LinearCircuit circuit = LinearCircuit.of(network, leaking(stance, elements));
        Flow flow = circuit.solve();
        double largestA = 0;
        for (double ampere : flow.currentA()) {
            largestA = Math.max(largestA, Math.abs(ampere));
        }
        List<Integer> disagreeing = new ArrayList<>();
        for (int element : elements) {
            double ampere = circuit.solved(flow, element) ? flow.currentA()[element] : 0;
            boolean disagrees = stance.way(element) == Stance.Way.CONDUCTS
                    ? ampere < -SLACK * largestA
                    : ampere * Stance.LEAK_OHM > SLACK_V;
            if (disagrees) {
                disagreeing.add(element);
            }
        }
        return disagreeing;
    }

    private static Stance leaking(Stance stance, List<Integer> elements) {
        Stance leaking = stance;
        for (int element : elements) {
            if (stance.way(element) == Stance.Way.BLOCKS) {
                leaking = leaking.with(element, Stance.Way.LEAKS);
            }
        }
        return leaking;
    }
}
