package org.sagwise.network;

/** What it takes to solve a network from the beginning, so that a caller can stop in time. */
public final class SolvingEffort {

    /** For each element: loops, nodes, potentials; as tried. */
    private static final double EACH_ELEMENT = 2_000;

    /** For each element of each loop: sums in doubled precision, done several times; as tried. */
    private static final double EACH_STEP = 100;

    private SolvingEffort() {}

    /** Additions and multiplications that {@link NetworkSolver#solve} takes, roughly. */
    public static double of(Network network) {
        Branches branches = Branches.of(network, Stance.initial(network));
        SpanningForest forest = new SpanningForest(branches, network.referencePreference());
        double steps = 0;
        for (int b = 0; b < branches.count(); b++) {
            boolean closes = forest.island[branches.from[b]] == forest.island[branches.to[b]];
            if (closes && !forest.inForest[b]) {
                steps += Loop.closedBy(b, branches, forest).path.length;
            }
        }
        return EACH_ELEMENT * branches.count() + EACH_STEP * steps;
    }
}
