package org.sagwise.network;

import java.util.ArrayList;
import java.util.List;

/**
 * Branches whose wiring and resistances are fixed, factorised once and solved for any emfs and
 * driven currents.
 */
final class LinearCircuit {
    private final Branches branches;
    private final SpanningForest forest;
    private final boolean[] fed;
    private final List<Loop> driven = new ArrayList<>();
    private final List<Integer> stranded = new ArrayList<>();
    private final LoopSystem resistive;
    private final IdealLoops ideal;

    LinearCircuit(Branches branches, List<Integer> referencePreference) {
        this.branches = branches;
        forest = new SpanningForest(branches, referencePreference);
        fed = new boolean[forest.root.length];
        List<Loop> joints = new ArrayList<>();
        List<Loop> sources = new ArrayList<>();
        List<Loop> resistances = new ArrayList<>();
        for (int b = 0; b < branches.count(); b++) {
            if (!joined(branches.from[b], branches.to[b])) {
                stranded.add(b);
                continue;
            }
            fed[islandOf(b)] |= branches.feeds[b];
            if (!forest.inForest[b]) {
                List<Loop> alike = switch (branches.kind[b]) {
                    case JOINT -> joints;
                    case IDEAL_SOURCE -> sources;
                    case RESISTIVE -> resistances;
                    case DRIVEN -> driven;
                };
                alike.add(Loop.closedBy(b, branches, forest));
            }
        }
        resistive = new LoopSystem(resistances, branches.ohm, branches);
        ideal = new IdealLoops(branches, forest, joints, sources);
    }

    /** The circuit of a network whose chargers and converters stand as given. */
    static LinearCircuit of(Network network, Stance stance) {
        return new LinearCircuit(Branches.of(network, stance), network.referencePreference());
    }

    Branches branches() {
        return branches;
    }

    /** The loops that driven branches close. */
    List<Loop> drivenLoops() {
        return driven;
    }

    /** Number of the island a node lies in. */
    int island(int node) {
        return forest.island[node];
    }

    /** Whether two nodes lie in one island. */
    boolean joined(int a, int b) {
        return forest.island[a] == forest.island[b];
    }

    /** Whether some source can set the potential of this node. */
    boolean fed(int node) {
        return fed[forest.island[node]];
    }

    private int islandOf(int branch) {
        return forest.island[branches.from[branch]];
    }

    /** Currents and potentials as the branches themselves are driven. */
    Flow solve() {
        return solve(branches.drive);
    }

    /**
     * Currents and potentials for the given emfs (V), and currents (A) of driven branches, in the
     * order of the branches.
     */
    Flow solve(double[] drive) {
        List<Finding> findings = new ArrayList<>();
        boolean[] unsolved = new boolean[fed.length];
        double[] currentA = new double[branches.count()];
        for (int b : stranded) {
            if (drive[b] != 0) {
                unsolved[forest.island[branches.from[b]]] = true;
                unsolved[forest.island[branches.to[b]]] = true;
                findings.add(new Finding.NoReturnPath(b));
            }
        }
        for (Loop loop : driven) {
            loop.circulate(drive[loop.chord], currentA);
        }
        ideal.check(drive, findings, unsolved);
        resistive.balance(drive, currentA);
        resistive.balance(drive, currentA);
        ideal.share(currentA);
        return new Flow(currentA, potentials(drive, currentA, unsolved), unsolved, findings);
    }

    private double[] potentials(double[] drive, double[] currentA, boolean[] unsolved) {
        double[] volt = new double[branches.nodeCount];
        for (int node : forest.order) {
            int island = forest.island[node];
            if (!fed[island] || unsolved[island]) {
                volt[node] = Double.NaN;
            } else if (forest.parent[node] >= 0) {
                int branch = forest.parentBranch[node];
                double rise = drive[branch] - branches.ohm[branch] * currentA[branch];
                double step = branches.to[branch] == node ? rise : -rise;
                volt[node] = volt[forest.parent[node]] + step;
            }
        }
        return volt;
    }

    /** Whether both ends of a branch lie in islands that have an answer. */
    boolean solved(Flow flow, int branch) {
        return !flow.unsolved()[forest.island[branches.from[branch]]]
                && !flow.unsolved()[forest.island[branches.to[branch]]];
    }

    /** Whether the current of a branch can be told from this flow. */
    boolean tells(Flow flow, int branch) {
        return solved(flow, branch) && !ideal.undivided(branch);
    }
}
