package org.sagwise.network;

import java.util.List;

/** Which loops run through each resistance of the forest, and in which direction. */
final class BranchUse {
    private final double[] ohm;
    private final int[] begin;
    private final int[] loopOf;
    private final int[] signOf;

    BranchUse(List<Loop> loops, double[] ohm) {
        this.ohm = ohm;
        begin = new int[ohm.length + 2];
        for (Loop loop : loops) {
            for (int branch : loop.path) {
                begin[branch + 2]++;
            }
        }
        for (int i = 1; i < begin.length; i++) {
            begin[i] += begin[i - 1];
        }
        loopOf = new int[begin[begin.length - 1]];
        signOf = new int[loopOf.length];
        for (int i = 0; i < loops.size(); i++) {
            Loop loop = loops.get(i);
            for (int k = 0; k < loop.path.length; k++) {
                int slot = begin[loop.path[k] + 1]++;
                loopOf[slot] = i;
                signOf[slot] = loop.sign[k];
            }
        }
    }

    /**
     * Adds each resistance to the lower half and diagonal of the matrix, for each pair it serves.
     */
    void addShared(double[][] matrix) {
        for (int branch = 0; branch < ohm.length; branch++) {
            if (ohm[branch] > 0) {
                addShared(branch, matrix);
            }
        }
    }

    private void addShared(int branch, double[][] matrix) {
        for (int s = begin[branch]; s < begin[branch + 1]; s++) {
            double signedOhm = signOf[s] * ohm[branch];
            double[] row = matrix[loopOf[s]];
            for (int t = begin[branch]; t <= s; t++) {
                row[loopOf[t]] += signedOhm * signOf[t];
            }
        }
    }
}
