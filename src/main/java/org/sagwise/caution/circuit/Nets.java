package org.sagwise.caution.circuit;

import java.util.Arrays;

/** Numbers gathered into nets: two that are joined, directly or not, lie in the same net. */
final class Nets {

    private final int[] parent;

    Nets(int size) {
        parent = new int[size];
        Arrays.setAll(parent, number -> number);
    }

    void join(int one, int other) {
        int a = root(one);
        int b = root(other);
        parent[Math.max(a, b)] = Math.min(a, b);
    }

    /** The net of every number; nets are numbered from 0 in the order of their first number. */
    int[] numbered() {
        int[] nets = new int[parent.length];
        int count = 0;
        for (int i = 0; i < nets.length; i++) {
            int root = root(i);
            nets[i] = root == i ? count++ : nets[root];
        }
        return nets;
    }

    private int root(int number) {
        int at = number;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }
}
