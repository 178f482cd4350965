package org.sagwise.picture.layout;

import java.util.List;
import java.util.Optional;

/**
 * How a piece of circuit is to be laid out.
 *
 * @param pack its sources, from the negative end to the positive one; empty if it has none
 * @param load what they feed, from the positive end on; empty if there is nothing
 * @param rest what fits no such order, to be laid out from top to bottom; empty if there is none
 */
record Plan(Optional<Branch> pack, Optional<Branch> load, Optional<Branch> rest) {

    /** A plan for a connected piece that could be reduced. */
    static Plan of(List<Edge> reduced) {
        if (reduced.size() == 1) {
            Branch only = reduced.get(0).branch();
            return reduced.get(0).isSource()
                    ? new Plan(Optional.of(forward(only)), Optional.empty(), Optional.empty())
                    : new Plan(Optional.empty(), Optional.of(only), Optional.empty());
        }
        Edge one = reduced.get(0);
        Edge other = reduced.get(1);
        boolean firstIsPack =
                one.branch().count(Strand.Role.SOURCE) >= other.branch().count(Strand.Role.SOURCE);
        Edge pack = forward(firstIsPack ? one : other);
        Edge load = firstIsPack ? other : one;
        boolean atPlus = load.touches(pack.to());
        Edge onward = atPlus
                ? load.startingAt(pack.to())
                : load.startingAt(pack.from()).reversed();
        return new Plan(Optional.of(pack.branch()), Optional.of(onward.branch()), Optional.empty());
    }

    /** A plan for what cannot be reduced, in rows for want of an order. */
    static Plan unordered(List<Edge> edges) {
        List<Strand> strands =
                edges.stream().flatMap(edge -> edge.branch().strands()).toList();
        return ofRest(strands.size() > 1 ? Optional.of(new Tableau(strands).branch()) : Optional.empty());
    }

    /** A plan for what cannot be reduced, in layers by the way from the source's positive end. */
    static Plan layered(List<Edge> edges) {
        return ofRest(Optional.of(Layers.of(edges)));
    }

    private static Plan ofRest(Optional<Branch> rest) {
        return new Plan(Optional.empty(), Optional.empty(), rest);
    }

    /** Whether edges that are left of a reduction make a loop, or one with a gap. */
    static boolean isFor(List<Edge> reduced) {
        return reduced.size() == 1
                || reduced.size() == 2
                        && (reduced.get(0).touches(reduced.get(1).from())
                                || reduced.get(0).touches(reduced.get(1).to()));
    }

    private static Edge forward(Edge pack) {
        return isForward(pack.branch()) ? pack : pack.reversed();
    }

    private static Branch forward(Branch pack) {
        return isForward(pack) ? pack : pack.reversed();
    }

    private static boolean isForward(Branch pack) {
        int drive = pack.drive();
        return drive != 0
                ? drive > 0
                : pack.strands()
                                .filter(s -> s.drive() != 0)
                                .findFirst()
                                .map(Strand::drive)
                                .orElse(1)
                        > 0;
    }
}
