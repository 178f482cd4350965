package org.sagwise.network;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A spanning forest of least resistance (Kruskal), one tree an island, each rooted at the island's
 * reference node. Ideal joints come first, then ideal sources, then resistances in rising order;
 * driven branches join nothing.
 */
final class SpanningForest {
    /** Number of the island of each node; islands are numbered by their lowest node. */
    final int[] island;

    /** Reference node of each island. */
    final int[] root;

    /** Nodes such that each follows its parent. */
    final int[] order;

    /** Parent of each node; -1 for a root. */
    final int[] parent;

    /** Branch that joins a node to its parent; -1 for a root. */
    final int[] parentBranch;

    /** Number of branches between a node and its root. */
    final int[] depth;

    /** True for the branches of the forest. */
    final boolean[] inForest;

    private final Branches branches;

    SpanningForest(Branches branches, List<Integer> referencePreference) {
        this.branches = branches;
        int nodes = branches.nodeCount;
        DisjointSets sets = new DisjointSets(nodes);
        inForest = new boolean[branches.count()];
        for (int branch : byResistance()) {
            inForest[branch] = sets.join(branches.from[branch], branches.to[branch]);
        }
        island = new int[nodes];
        root = new int[number(sets)];
        chooseRoots(referencePreference);
        order = new int[nodes];
        parent = new int[nodes];
        parentBranch = new int[nodes];
        depth = new int[nodes];
        grow();
    }

    private int[] byResistance() {
        Integer[] joining = new Integer[branches.count()];
        int count = 0;
        for (int b = 0; b < branches.count(); b++) {
            if (branches.kind[b] != Branches.Kind.DRIVEN) {
                joining[count++] = b;
            }
        }
        Comparator<Integer> kindThenOhm = (a, b) -> {
            int byKind = branches.kind[a].compareTo(branches.kind[b]);
            return byKind != 0 ? byKind : Double.compare(branches.ohm[a], branches.ohm[b]);
        };
        Arrays.sort(joining, 0, count, kindThenOhm);
        int[] sorted = new int[count];
        for (int i = 0; i < count; i++) {
            sorted[i] = joining[i];
        }
        return sorted;
    }

    /** Numbers the islands and returns how many there are. */
    private int number(DisjointSets sets) {
        int islands = 0;
        for (int node = 0; node < island.length; node++) {
            int leader = sets.find(node);
            island[node] = leader == node ? islands++ : island[leader];
        }
        return islands;
    }

    private void chooseRoots(List<Integer> referencePreference) {
        Arrays.fill(root, -1);
        for (int node : referencePreference) {
            rootIfNone(node);
        }
        for (int b = 0; b < branches.count(); b++) {
            if (branches.feeds[b]) {
                rootIfNone(branches.from[b]);
            }
        }
        for (int node = 0; node < island.length; node++) {
            rootIfNone(node);
        }
    }

    private void rootIfNone(int node) {
        if (root[island[node]] < 0) {
            root[island[node]] = node;
        }
    }

    /** Orders each tree from its root outwards. */
    private void grow() {
        Adjacency adjacency = new Adjacency(branches, inForest);
        int end = 0;
        for (int start : root) {
            parent[start] = -1;
            parentBranch[start] = -1;
            order[end++] = start;
        }
        for (int next = 0; next < end; next++) {
            int node = order[next];
            for (int slot = adjacency.begin(node); slot < adjacency.end(node); slot++) {
                int branch = adjacency.branch(slot);
                if (branch != parentBranch[node]) {
                    int child = branches.from[branch] + branches.to[branch] - node;
                    parent[child] = node;
                    parentBranch[child] = branch;
                    depth[child] = depth[node] + 1;
                    order[end++] = child;
                }
            }
        }
    }
}
