package org.sagwise.caution.circuit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How many sources high a pack stands between its lowest and its highest net. */
final class Heights {

    private Heights() {}

    /**
     * Height of a pack with one source turned round.
     *
     * @param turned the source taken as turned
     */
    static int of(Pack pack, Branch turned) {
        Map<Integer, List<Branch>> atNet = new HashMap<>();
        for (Branch source : pack.sources()) {
            atNet.computeIfAbsent(source.from(), net -> new java.util.ArrayList<>()).add(source);
            atNet.computeIfAbsent(source.to(), net -> new java.util.ArrayList<>()).add(source);
        }
        int root = pack.sources().get(0).from();
        Map<Integer, Integer> heights = new HashMap<>(Map.of(root, 0));
        Deque<Integer> open = new ArrayDeque<>(List.of(root));
        while (!open.isEmpty()) {
            int net = open.remove();
            for (Branch source : atNet.get(net)) {
                int step = (source.from() == net) == !source.equals(turned) ? 1 : -1;
                if (heights.putIfAbsent(source.across(net), heights.get(net) + step) == null) {
                    open.add(source.across(net));
                }
            }
        }
        int low = heights.values().stream().mapToInt(Integer::intValue).min().orElse(0);
        int high = heights.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        return high - low;
    }
}
