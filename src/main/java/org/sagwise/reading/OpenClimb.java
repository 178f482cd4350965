package org.sagwise.reading;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/**
 * The way from the reference to the highest and farthest place that anything joined reaches, where
 * no ring is closed: a bench with a joint missing still climbs, and the missing joint holds it all.
 */
final class OpenClimb {

    private static final double SAME_V = 1e-9;

    private final Ways ways;
    private final IntToDoubleFunction heightV;

    /**
     * @param heightV potential of a node, V; NaN where it hangs in the air
     */
    OpenClimb(Ways ways, IntToDoubleFunction heightV) {
        this.ways = ways;
        this.heightV = heightV;
    }

    /** The way, in steps without current; empty where nothing rises from this node. */
    List<Ways.Way> from(int reference) {
        Map<Integer, Ways.Way> arrivedBy = new LinkedHashMap<>();
        Deque<Integer> next = new ArrayDeque<>(List.of(reference));
        int top = reference;
        while (!next.isEmpty()) {
            int node = next.remove();
            if (heightV.applyAsDouble(node) > heightV.applyAsDouble(top) - SAME_V) {
                top = node;
            }
            for (Ways.Way way : ways.at(node)) {
                int across = way.across(node);
                if (across != reference && !arrivedBy.containsKey(across)) {
                    arrivedBy.put(across, way.from() == node ? way : way.turned());
                    next.add(across);
                }
            }
        }
        List<Ways.Way> climb = Ways.between(reference, top, arrivedBy);
        boolean rises = climb.stream().anyMatch(this::rises);
        return rises ? climb : List.of();
    }

    private boolean rises(Ways.Way way) {
        return Math.abs(heightV.applyAsDouble(way.to()) - heightV.applyAsDouble(way.from())) > SAME_V;
    }
}
