package org.sagwise.network;

import java.util.ArrayList;
import java.util.List;

/**
 * Loops without any resistance. Those of joints alone leave the currents of their joints unknown.
 * Those with ideal sources either contradict themselves or share their current as equal small
 * resistances would, which is the split with the least sum of squares.
 */
final class IdealLoops {
    /** Part of the voltages in a loop by which their sum may miss zero; covers rounding alone. */
    private static final double AGREEMENT = 1e-12;

    private final Branches branches;
    private final SpanningForest forest;
    private final List<Loop> sourceLoops;
    private final boolean[] undivided;
    private final LoopSystem sharing;

    IdealLoops(Branches branches, SpanningForest forest, List<Loop> joints, List<Loop> sources) {
        this.branches = branches;
        this.forest = forest;
        this.sourceLoops = sources;
        undivided = new boolean[branches.count()];
        for (Loop loop : joints) {
            undivided[loop.chord] = true;
            for (int branch : loop.path) {
                undivided[branch] = true;
            }
        }
        sharing = new LoopSystem(sources, sources.isEmpty() ? new double[0] : equalSources(), branches);
    }

    private double[] equalSources() {
        double[] ohm = new double[branches.count()];
        for (int b = 0; b < ohm.length; b++) {
            ohm[b] = branches.kind[b] == Branches.Kind.IDEAL_SOURCE ? 1 : 0;
        }
        return ohm;
    }

    /** True for a joint in a loop of joints, whose current cannot be told. */
    boolean undivided(int branch) {
        return undivided[branch];
    }

    /** Reports loops that contradict themselves and marks their islands. */
    void check(double[] emfV, List<Finding> findings, boolean[] unsolved) {
        for (Loop loop : sourceLoops) {
            double excessV = Math.abs(loop.excessV(emfV, branches.ohm, emfV));
            double allowedV = AGREEMENT * sumOfSizes(loop, emfV);
            if (excessV > allowedV) {
                unsolved[forest.island[branches.from[loop.chord]]] = true;
                findings.add(finding(loop, excessV));
            }
        }
    }

    private static double sumOfSizes(Loop loop, double[] emfV) {
        double sum = Math.abs(emfV[loop.chord]);
        for (int branch : loop.path) {
            sum += Math.abs(emfV[branch]);
        }
        return sum;
    }

    private Finding finding(Loop loop, double excessV) {
        List<Integer> sources = new ArrayList<>(List.of(loop.chord));
        for (int branch : loop.path) {
            if (branches.kind[branch] == Branches.Kind.IDEAL_SOURCE) {
                sources.add(branch);
            }
        }
        return sources.size() == 1
                ? new Finding.ShortedIdealSource(loop.chord)
                : new Finding.ContradictingIdealSources(sources, excessV);
    }

    /** Divides the current between ideal sources that stand side by side. */
    void share(double[] currentA) {
        if (!sourceLoops.isEmpty()) {
            sharing.balance(new double[branches.count()], currentA);
        }
    }
}
