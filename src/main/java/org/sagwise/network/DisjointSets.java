package org.sagwise.network;

/** Union-find with path halving: which of n things have been joined, directly or through others. */
final class DisjointSets {
    private final int[] parent;

    DisjointSets(int size) {
        parent = new int[size];
        for (int i = 0; i < size; i++) {
            parent[i] = i;
        }
    }

    int find(int thing) {
        int at = thing;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** Joins the sets of a and b; false if they were one already. The smaller number leads. */
    boolean join(int a, int b) {
        int leaderOfA = find(a);
        int leaderOfB = find(b);
        if (leaderOfA == leaderOfB) {
            return false;
        }
        parent[Math.max(leaderOfA, leaderOfB)] = Math.min(leaderOfA, leaderOfB);
        return true;
    }
}
