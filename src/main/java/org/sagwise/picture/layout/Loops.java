package org.sagwise.picture.layout;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Splits a network into the pieces that hang together by loops (its biconnected components, after
 * Hopcroft and Tarjan, "Algorithm 447", Communications of the ACM 16 (1973) 372).
 */
final class Loops {

    private final List<Edge> edges;
    private final Map<Integer, List<Integer>> atJoint = new HashMap<>();
    private final Map<Integer, Integer> depth = new HashMap<>();
    private final Map<Integer, Integer> low = new HashMap<>();
    private final Deque<Integer> open = new ArrayDeque<>();
    private final boolean[] seen;
    private final List<List<Edge>> found = new ArrayList<>();

    private Loops(List<Edge> edges) {
        this.edges = edges;
        this.seen = new boolean[edges.size()];
        for (int i = 0; i < edges.size(); i++) {
            atJoint.computeIfAbsent(edges.get(i).from(), key -> new ArrayList<>())
                    .add(i);
            atJoint.computeIfAbsent(edges.get(i).to(), key -> new ArrayList<>()).add(i);
        }
    }

    /** The pieces; an edge on no loop is a piece of its own. */
    static List<List<Edge>> of(List<Edge> edges) {
        Loops loops = new Loops(edges);
        for (Edge edge : edges) {
            if (!loops.depth.containsKey(edge.from())) {
                loops.walk(edge.from());
            }
        }
        return loops.found;
    }

    /** One stop of the walk: a joint, the edge it was reached by, and the next edge to look at. */
    private static final class Stop {
        private final int joint;
        private final int reachedBy;
        private int next;

        Stop(int joint, int reachedBy) {
            this.joint = joint;
            this.reachedBy = reachedBy;
        }
    }

    /** Depth first with a stack of its own: a long chain must not exhaust the thread's. */
    private void walk(int root) {
        Deque<Stop> way = new ArrayDeque<>();
        way.push(arrive(root, -1, 0));
        while (!way.isEmpty()) {
            Stop stop = way.peek();
            List<Integer> here = atJoint.get(stop.joint);
            if (stop.next == here.size()) {
                way.pop();
                if (!way.isEmpty()) {
                    leave(stop, way.peek());
                }
            } else {
                look(here.get(stop.next++), stop, way);
            }
        }
    }

    private Stop arrive(int joint, int reachedBy, int newDepth) {
        depth.put(joint, newDepth);
        low.put(joint, newDepth);
        return new Stop(joint, reachedBy);
    }

    private void look(int edge, Stop stop, Deque<Stop> way) {
        if (seen[edge]) {
            return;
        }
        seen[edge] = true;
        open.push(edge);
        int other = edges.get(edge).startingAt(stop.joint).to();
        if (depth.containsKey(other)) {
            low.merge(stop.joint, depth.get(other), Math::min);
        } else {
            way.push(arrive(other, edge, depth.get(stop.joint) + 1));
        }
    }

    private void leave(Stop stop, Stop before) {
        low.merge(before.joint, low.get(stop.joint), Math::min);
        if (low.get(stop.joint) >= depth.get(before.joint)) {
            List<Edge> piece = new ArrayList<>();
            int edge;
            do {
                edge = open.pop();
                piece.add(0, edges.get(edge));
            } while (edge != stop.reachedBy);
            found.add(piece);
        }
    }
}
