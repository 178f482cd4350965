package org.sagwise.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How many sources high the nets of a pack stand above each other. */
final class Heights {

    private final Map<Integer, List<Branch>> atNet = new HashMap<>();
    private final Map<Integer, Integer> heights = new HashMap<>();
    private final String turned;

    private Heights(Pack pack, Branch turned, Netlist held) {
        this.turned = turned.part();
        for (Branch source : pack.sources()) {
            Branch branch = held.branch(source.part()).orElseThrow();
            atNet.computeIfAbsent(branch.from(), net -> new ArrayList<>()).add(branch);
            atNet.computeIfAbsent(branch.to(), net -> new ArrayList<>()).add(branch);
        }
        climb(held.branch(turned.part()).orElseThrow().from());
    }

    /**
     * How high loads stand from end to end, all together, once a source is turned round.
     *
     * @param held the circuit with the button held
     */
    static int acrossLoads(Pack pack, Branch turned, Netlist held) {
        Map<Integer, Integer> heights = new Heights(pack, turned, held).heights;
        return held.loads().stream()
                .filter(load -> heights.containsKey(load.from()))
                .filter(load -> heights.containsKey(load.to()))
                .mapToInt(load -> Math.abs(heights.get(load.from()) - heights.get(load.to())))
                .sum();
    }

    private void climb(int root) {
        Deque<Integer> open = new ArrayDeque<>(List.of(root));
        heights.put(root, 0);
        while (!open.isEmpty()) {
            int net = open.remove();
            for (Branch source : atNet.get(net)) {
                boolean up = (source.from() == net) != source.part().equals(turned);
                int next = source.across(net);
                if (heights.putIfAbsent(next, heights.get(net) + (up ? 1 : -1)) == null) {
                    open.add(next);
                }
            }
        }
    }
}
