package org.sagwise.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The shortest way from one net to another through sources alone. */
public final class Climb {

    private Climb() {}

    /** The sources passed from one net to another; empty where none leads there. */
    public static Optional<List<Loop.Step>> between(Netlist circuit, int from, int to) {
        Map<Integer, Branch> cameBy = new HashMap<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            int net = open.remove();
            for (Branch source : circuit.sources()) {
                boolean touches = source.from() == net || source.to() == net;
                int next = touches ? source.across(net) : net;
                if (next != net && next != from && cameBy.putIfAbsent(next, source) == null) {
                    open.add(next);
                }
            }
        }
        return cameBy.containsKey(to) ? Optional.of(back(cameBy, from, to)) : Optional.empty();
    }

    private static List<Loop.Step> back(Map<Integer, Branch> cameBy, int from, int to) {
        List<Loop.Step> steps = new ArrayList<>();
        int net = to;
        while (net != from) {
            Branch source = cameBy.get(net);
            steps.add(new Loop.Step(source, source.to() == net ? 1 : -1));
            net = source.across(net);
        }
        Collections.reverse(steps);
        return steps;
    }
}
