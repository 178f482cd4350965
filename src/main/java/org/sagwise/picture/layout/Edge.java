package org.sagwise.picture.layout;

/**
 * A branch between two joints.
 *
 * @param from joint where it begins
 * @param to joint where it ends
 * @param branch what it is made of, passed from {@code from} to {@code to}
 */
record Edge(int from, int to, Branch branch) {

    Edge reversed() {
        return new Edge(to, from, branch.reversed());
    }

    boolean touches(int joint) {
        return from == joint || to == joint;
    }

    boolean sameEnds(Edge other) {
        return from == other.from && to == other.to || from == other.to && to == other.from;
    }

    /** This edge so that it begins at a joint that it touches. */
    Edge startingAt(int joint) {
        return from == joint ? this : reversed();
    }

    /** This edge with one joint taken for another. */
    Edge merging(int joint, int into) {
        return new Edge(from == joint ? into : from, to == joint ? into : to, branch);
    }

    boolean isSource() {
        return branch.has(Strand.Role.SOURCE);
    }
}
