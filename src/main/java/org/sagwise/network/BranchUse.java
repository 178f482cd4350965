package org.sagwise.network;

import java.util.List;

/** Which loops run through each resistance of the forest, and in which direction; in slots. */
final class BranchUse {
    private final int[] begin;
    private final int[] loopOf;
    private final int[] signOf;
    private final int branches;

    BranchUse(List<Loop> loops, double[] ohm) {
        begin = new int[ohm.length + 2];
        for (Loop loop : loops) {
            for (int branch : loop.path) {
                begin[branch + 2] += ohm[branch] > 0 ? 1 : 0;
            }
        }
        int used = 0;
        for (int i = 1; i < begin.length; i++) {
            used += begin[i] > 0 ? 1 : 0;
            begin[i] += begin[i - 1];
        }
        branches = used;
        loopOf = new int[begin[begin.length - 1]];
        signOf = new int[loopOf.length];
        for (int i = 0; i < loops.size(); i++) {
            fill(i, loops.get(i), ohm);
        }
    }

    private void fill(int number, Loop loop, double[] ohm) {
        for (int k = 0; k < loop.path.length; k++) {
            if (ohm[loop.path[k]] > 0) {
                int slot = begin[loop.path[k] + 1]++;
                loopOf[slot] = number;
                signOf[slot] = loop.sign[k];
            }
        }
    }

    /**
     * Adds each resistance to the lower half and diagonal of a matrix of loops, for all it serves.
     */
    void addShared(double[] ohm, double[][] matrix) {
        for (int branch = 0; branch < ohm.length; branch++) {
            for (int s = begin[branch]; s < begin[branch + 1]; s++) {
                double signedOhm = signOf[s] * ohm[branch];
                double[] row = matrix[loopOf[s]];
                for (int t = begin[branch]; t <= s; t++) {
                    row[loopOf[t]] += signedOhm * signOf[t];
                }
            }
        }
    }

    /** Number of resistances that some loop runs through. */
    int branches() {
        return branches;
    }

    /** First slot of a branch; its loops stand in ascending order. */
    int begin(int branch) {
        return begin[branch];
    }

    /** Slot after the last of a branch. */
    int end(int branch) {
        return begin[branch + 1];
    }
}
