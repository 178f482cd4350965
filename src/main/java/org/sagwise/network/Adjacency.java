package org.sagwise.network;

/** Which of the chosen branches end at each node, in compressed rows. */
final class Adjacency {
    private final int[] begin;
    private final int[] branchOf;

    Adjacency(Branches branches, boolean[] chosen) {
        begin = new int[branches.nodeCount + 2];
        for (int b = 0; b < chosen.length; b++) {
            if (chosen[b]) {
                begin[branches.from[b] + 2]++;
                begin[branches.to[b] + 2]++;
            }
        }
        for (int i = 1; i < begin.length; i++) {
            begin[i] += begin[i - 1];
        }
        branchOf = new int[begin[begin.length - 1]];
        for (int b = 0; b < chosen.length; b++) {
            if (chosen[b]) {
                branchOf[begin[branches.from[b] + 1]++] = b;
                branchOf[begin[branches.to[b] + 1]++] = b;
            }
        }
    }

    /** First slot of a node. */
    int begin(int node) {
        return begin[node];
    }

    /** Slot after the last of a node. */
    int end(int node) {
        return begin[node + 1];
    }

    /** The branch in a slot. */
    int branch(int slot) {
        return branchOf[slot];
    }
}
