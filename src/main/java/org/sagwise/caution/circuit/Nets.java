package org.sagwise.caution.circuit;

import org.sagwise.scenario.TerminalRef;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Terminals gathered into nets: two terminals that metal joins lie in the same net. */
final class Nets {

    private final Map<TerminalRef, Integer> numbers = new HashMap<>();
    private final List<TerminalRef> terminals = new ArrayList<>();
    private int[] parent = new int[64];

    void add(TerminalRef terminal) {
        int number = terminals.size();
        if (number == parent.length) {
            parent = java.util.Arrays.copyOf(parent, 2 * number);
        }
        parent[number] = number;
        numbers.put(terminal, number);
        terminals.add(terminal);
    }

    void join(TerminalRef one, TerminalRef other) {
        int a = root(numbers.get(one));
        int b = root(numbers.get(other));
        parent[Math.max(a, b)] = Math.min(a, b);
    }

    /** The net of every terminal; nets are numbered from 0 in the order of their first terminal. */
    Map<TerminalRef, Integer> numbered() {
        int[] netOfRoot = new int[terminals.size()];
        Map<TerminalRef, Integer> nets = new HashMap<>();
        int count = 0;
        for (int i = 0; i < terminals.size(); i++) {
            int root = root(i);
            if (root == i) {
                netOfRoot[i] = count++;
            }
            nets.put(terminals.get(i), netOfRoot[root]);
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
