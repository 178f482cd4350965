package org.sagwise.picture.layout;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Sets out what is neither series nor parallel, such as a bridge: a source upright on the left, and
 * on its right everything else in rows, by how many parts lie between it and the source's positive
 * end. What joins two points of the same distance has a row of its own between them.
 */
final class Layers {

    private final List<Edge> edges;
    private final Map<Integer, Integer> distances = new HashMap<>();

    private Layers(List<Edge> edges) {
        this.edges = edges;
    }

    /** What is to be laid out from top to bottom. */
    static Branch of(List<Edge> edges) {
        List<Edge> others = new ArrayList<>(edges);
        Edge first = edges.stream().filter(Edge::isSource).findFirst().orElseGet(() -> edges.get(0));
        if (!first.isSource()) {
            return new Layers(others).rows(first.from());
        }
        others.remove(first);
        Edge fromPlus = first.branch().drive() < 0 ? first : first.reversed();
        Branch rows = new Layers(others).rows(fromPlus.from());
        return new Branch.Parallel(List.of(fromPlus.branch(), rows));
    }

    private Branch rows(int start) {
        measure(start);
        Map<Integer, List<Branch>> rows = new TreeMap<>();
        for (Edge edge : edges) {
            int from = distance(edge.from());
            int to = distance(edge.to());
            Edge downward = from <= to ? edge : edge.reversed();
            rows.computeIfAbsent(from + to, key -> new ArrayList<>()).add(downward.branch());
        }
        List<Branch> below = rows.values().stream().map(Layers::row).toList();
        return below.size() == 1 ? below.get(0) : new Branch.Series(below);
    }

    private static Branch row(List<Branch> branches) {
        return branches.size() == 1 ? branches.get(0) : new Branch.Parallel(branches);
    }

    private int distance(int joint) {
        return distances.getOrDefault(joint, 0);
    }

    /** Breadth first. */
    private void measure(int start) {
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        distances.put(start, 0);
        while (!open.isEmpty()) {
            int joint = open.poll();
            for (Edge edge : edges) {
                if (edge.touches(joint)) {
                    int other = edge.startingAt(joint).to();
                    if (distances.putIfAbsent(other, distances.get(joint) + 1) == null) {
                        open.add(other);
                    }
                }
            }
        }
    }
}
