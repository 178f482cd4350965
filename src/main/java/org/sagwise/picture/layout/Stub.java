package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.List;

/** The straight pieces at the ends of a conductor. */
final class Stub {

    private static final int LONGEST = Arranger.STUB / PartShape.LATTICE;

    private Stub() {}

    /** Cells from a terminal straight out, as far as nothing is in the way. */
    static List<Integer> of(Lattice lattice, TerminalPoint from) {
        List<Integer> cells = new ArrayList<>();
        int cell = lattice.cell(from.x(), from.y());
        cells.add(cell);
        for (int i = 0; i < LONGEST; i++) {
            int next = lattice.next(cell, from.out());
            if (next < 0 || lattice.isBlocked(next)) {
                break;
            }
            cells.add(next);
            cell = next;
        }
        return cells;
    }

    /** Whether two terminals look at each other across a short free gap. */
    static boolean face(Lattice lattice, TerminalPoint one, TerminalPoint other) {
        if (one.out() != other.out().opposite()) {
            return false;
        }
        int ahead = (other.x() - one.x()) * one.out().dx()
                + (other.y() - one.y()) * one.out().dy();
        int aside = Math.abs(other.x() - one.x()) + Math.abs(other.y() - one.y()) - Math.abs(ahead);
        return ahead > 0
                && aside == 0
                && ahead <= 3 * Arranger.STUB
                && straight(lattice, one, other).stream()
                        .skip(1)
                        .limit(Math.max(0, ahead / PartShape.LATTICE - 1))
                        .noneMatch(lattice::isBlocked);
    }

    /** Cells on the straight line between two terminals that face each other. */
    static List<Integer> straight(Lattice lattice, TerminalPoint one, TerminalPoint other) {
        List<Integer> cells = new ArrayList<>();
        int goal = lattice.cell(other.x(), other.y());
        int cell = lattice.cell(one.x(), one.y());
        while (cell >= 0 && cell != goal) {
            cells.add(cell);
            cell = lattice.next(cell, one.out());
        }
        cells.add(goal);
        return cells;
    }
}
