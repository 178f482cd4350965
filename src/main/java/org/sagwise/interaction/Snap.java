package org.sagwise.interaction;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.sagwise.picture.layout.PartShape;
import org.sagwise.picture.layout.TerminalPoint;

/**
 * Where parts come to lie that are let go near others: on the lattice, and terminal on terminal
 * where two that face each other are within reach.
 *
 * @param dx how far they go to the right
 * @param dy how far down
 * @param touches terminals that touch then, the moved one first
 */
record Snap(int dx, int dy, List<Touch> touches) {

    /** Within this distance two terminals find each other, in bench units. */
    private static final int REACH = PartShape.GRID * 3 / 4;

    /** Two terminals in one place. */
    record Touch(TerminalPoint moved, TerminalPoint other) {}

    static Snap of(Collection<TerminalPoint> moved, Collection<TerminalPoint> others, double dx, double dy) {
        int bestX = onLattice(dx);
        int bestY = onLattice(dy);
        double best = REACH;
        for (TerminalPoint one : moved) {
            for (TerminalPoint other : others) {
                double gap = Math.hypot(other.x() - one.x() - dx, other.y() - one.y() - dy);
                if (gap <= best && face(one, other)) {
                    best = gap;
                    bestX = other.x() - one.x();
                    bestY = other.y() - one.y();
                }
            }
        }
        return new Snap(bestX, bestY, touches(moved, others, bestX, bestY));
    }

    private static List<Touch> touches(
            Collection<TerminalPoint> moved, Collection<TerminalPoint> others, int dx, int dy) {
        List<Touch> touches = new ArrayList<>();
        for (TerminalPoint one : moved) {
            for (TerminalPoint other : others) {
                if (one.x() + dx == other.x() && one.y() + dy == other.y() && face(one, other)) {
                    touches.add(new Touch(one, other));
                }
            }
        }
        return touches;
    }

    private static boolean face(TerminalPoint one, TerminalPoint other) {
        return one.out() == other.out().opposite();
    }

    private static int onLattice(double units) {
        return (int) Math.round(units / PartShape.LATTICE) * PartShape.LATTICE;
    }
}
