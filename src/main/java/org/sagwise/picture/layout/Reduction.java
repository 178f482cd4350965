package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * Takes a network apart into series and parallel. Sources are joined with sources and the rest with
 * the rest for as long as possible, so that what is left are the pack and its load.
 */
final class Reduction {

    private static final BiPredicate<Edge, Edge> ALIKE = (a, b) -> a.isSource() == b.isSource();
    private static final BiPredicate<Edge, Edge> ANY = (a, b) -> true;

    private final List<Edge> edges;

    private Reduction(List<Edge> edges) {
        this.edges = new ArrayList<>(edges);
    }

    /** Edges that are left when nothing can be joined any more; two or one if it went well. */
    static List<Edge> of(List<Edge> edges) {
        Reduction reduction = new Reduction(edges);
        reduction.reduce();
        return List.copyOf(reduction.edges);
    }

    private void reduce() {
        boolean going = true;
        while (going && edges.size() > 1) {
            going = parallel(ALIKE) || edges.size() > 2 && series(ALIKE);
            if (!going && edges.size() > 2) {
                going = series(ANY) || parallel(ANY);
            }
        }
    }

    private boolean parallel(BiPredicate<Edge, Edge> fit) {
        for (int i = 0; i < edges.size(); i++) {
            for (int j = i + 1; j < edges.size(); j++) {
                Edge one = edges.get(i);
                Edge other = edges.get(j);
                if (one.sameEnds(other) && fit.test(one, other)) {
                    Branch both = Branch.inParallel(
                            one.branch(), other.startingAt(one.from()).branch());
                    replace(i, j, new Edge(one.from(), one.to(), both));
                    return true;
                }
            }
        }
        return false;
    }

    private boolean series(BiPredicate<Edge, Edge> fit) {
        for (int i = 0; i < edges.size(); i++) {
            for (int joint : new int[] {edges.get(i).to(), edges.get(i).from()}) {
                Optional<Integer> next = onlyOtherAt(joint, i);
                if (next.isPresent() && fit.test(edges.get(i), edges.get(next.get()))) {
                    joinAt(joint, i, next.get());
                    return true;
                }
            }
        }
        return false;
    }

    private void joinAt(int joint, int i, int j) {
        Edge before = edges.get(i).startingAt(joint).reversed();
        Edge after = edges.get(j).startingAt(joint);
        Branch both = Branch.inSeries(before.branch(), after.branch());
        replace(Math.min(i, j), Math.max(i, j), new Edge(before.from(), after.to(), both));
    }

    /** The one other edge at a joint where exactly two meet. */
    private Optional<Integer> onlyOtherAt(int joint, int edge) {
        List<Integer> others = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            if (i != edge && edges.get(i).touches(joint)) {
                others.add(i);
            }
        }
        return others.size() == 1 ? Optional.of(others.get(0)) : Optional.empty();
    }

    private void replace(int keep, int drop, Edge joined) {
        edges.set(keep, joined);
        edges.remove(drop);
    }
}
