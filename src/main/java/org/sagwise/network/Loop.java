package org.sagwise.network;

/**
 * The loop that a branch outside the forest closes: through the branch from its {@code from} to its
 * {@code to}, and back through the forest.
 */
final class Loop {
    /** The branch that closes the loop. */
    final int chord;

    /** The forest's branches in the loop; empty if both ends of the chord are one node. */
    final int[] path;

    /** +1 where the loop runs through {@code path[k]} from → to, -1 where against it. */
    final int[] sign;

    private Loop(int chord, int[] path, int[] sign) {
        this.chord = chord;
        this.path = path;
        this.sign = sign;
    }

    /** The loop of a chord whose ends lie in one island. */
    static Loop closedBy(int chord, Branches branches, SpanningForest forest) {
        int up = branches.to[chord];
        int down = branches.from[chord];
        int length = distance(up, down, forest);
        int[] path = new int[length];
        int[] sign = new int[length];
        for (int k = 0; k < length; k++) {
            if (forest.depth[up] >= forest.depth[down]) {
                path[k] = forest.parentBranch[up];
                sign[k] = branches.from[path[k]] == up ? 1 : -1;
                up = forest.parent[up];
            } else {
                path[k] = forest.parentBranch[down];
                sign[k] = branches.to[path[k]] == down ? 1 : -1;
                down = forest.parent[down];
            }
        }
        return new Loop(chord, path, sign);
    }

    private static int distance(int a, int b, SpanningForest forest) {
        int up = a;
        int down = b;
        int steps = 0;
        while (up != down) {
            if (forest.depth[up] >= forest.depth[down]) {
                up = forest.parent[up];
            } else {
                down = forest.parent[down];
            }
            steps++;
        }
        return steps;
    }

    /** Sends {@code ampere} more round the loop. */
    void circulate(double ampere, double[] currentA) {
        currentA[chord] += ampere;
        for (int k = 0; k < path.length; k++) {
            currentA[path[k]] += sign[k] * ampere;
        }
    }

    /**
     * Volts by which the emfs round the loop exceed the drops, summed as if in doubled precision
     * (the dot product Dot2 of T. Ogita, S. M. Rump and S. Oishi, "Accurate sum and dot product",
     * SIAM J. Sci. Comput. 26 (2005) 1955-1988).
     */
    double excessV(double[] emfV, double[] ohm, double[] currentA) {
        DoubledSum sum = new DoubledSum();
        sum.add(emfV[chord]);
        sum.addProduct(-ohm[chord], currentA[chord]);
        addPath(sum, emfV, ohm, currentA);
        return sum.value();
    }

    /**
     * Volts by which the potential rises on the way back, from the chord's {@code to} to its {@code
     * from}.
     */
    double returnV(double[] emfV, double[] ohm, double[] currentA) {
        DoubledSum sum = new DoubledSum();
        addPath(sum, emfV, ohm, currentA);
        return sum.value();
    }

    private void addPath(DoubledSum sum, double[] emfV, double[] ohm, double[] currentA) {
        for (int k = 0; k < path.length; k++) {
            int branch = path[k];
            sum.add(sign[k] * emfV[branch]);
            sum.addProduct(-sign[k] * ohm[branch], currentA[branch]);
        }
    }
}
