package org.sagwise.scenario.net;

import java.util.Arrays;

/**
 * Numbers gathered into groups: two that are joined, directly or through others, lie in the same
 * group. Each group goes by its smallest number.
 */
public final class Groups {

    private final int[] parent;

    /** Each number from 0 to below {@code size} in a group of its own. */
    public Groups(int size) {
        parent = new int[size];
        Arrays.setAll(parent, number -> number);
    }

    Groups(Groups other) {
        parent = other.parent.clone();
    }

    /** The smallest number of the group of this one. */
    public int of(int number) {
        int at = number;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** Makes one group of the groups of two numbers. */
    public void join(int one, int other) {
        int a = of(one);
        int b = of(other);
        parent[Math.max(a, b)] = Math.min(a, b);
    }

    /** For every number its group; groups are numbered from 0 in the order of their first number. */
    int[] numbered() {
        int[] groups = new int[parent.length];
        int count = 0;
        for (int i = 0; i < groups.length; i++) {
            int first = of(i);
            groups[i] = first == i ? count++ : groups[first];
        }
        return groups;
    }
}
