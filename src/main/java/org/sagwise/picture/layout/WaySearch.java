package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.IntBinaryOperator;

/**
 * Finds the way of a conductor on the lattice: short, with few bends, clear of parts, of labels and
 * of other conductors (A* search: Hart, Nilsson and Raphael, IEEE Transactions on Systems Science
 * and Cybernetics 4 (1968) 100).
 */
final class WaySearch {

    private static final int STEP = 2;
    private static final int BEND = 9;
    private static final int CROWDED = 1;
    private static final int LABEL = 16;
    private static final int CROSSING = 12;
    private static final int ALONG_KIN = 6;
    private static final int ALONG_STRANGER = 80;
    private static final int BACKWARD = 60;
    private static final int KNEE = 70;

    private final Lattice lattice;
    private final IntBinaryOperator kinship;
    private final int[] costs;

    /** In which search a cost was noted: clearing them all for each would cost more than it. */
    private final int[] notedIn;

    private final int[] cameFrom;
    private final Heap open = new Heap();
    private int budget;
    private int searches;

    /**
     * @param lattice the lattice
     * @param kinship 1 for two conductors that meet at a terminal anyway, else 0
     * @param budget how many cells all searches together may look at
     */
    WaySearch(Lattice lattice, IntBinaryOperator kinship, int budget) {
        this.lattice = lattice;
        this.kinship = kinship;
        this.budget = budget;
        this.costs = new int[4 * lattice.size()];
        this.notedIn = new int[4 * lattice.size()];
        this.cameFrom = new int[4 * lattice.size()];
    }

    /** Where a search is to arrive. */
    interface Goal {

        boolean isAt(int cell);

        /** Least number of steps still to go. */
        int stepsFrom(int cell);

        /** What arriving in a direction costs on top. */
        int arrivalCost(Bearing way);
    }

    /** The end of another terminal's stub. */
    static Goal at(Lattice lattice, int cell, Bearing out) {
        return new Goal() {
            @Override
            public boolean isAt(int other) {
                return other == cell;
            }

            @Override
            public int stepsFrom(int other) {
                return lattice.steps(other, cell);
            }

            @Override
            public int arrivalCost(Bearing way) {
                return turn(way, out.opposite());
            }
        };
    }

    /** Cells from a start to the goal; empty if there is no way or the budget is used up. */
    Optional<List<Integer>> find(int start, Bearing heading, Goal goal, int owner) {
        searches++;
        open.clear();
        int first = 4 * start + heading.ordinal();
        note(first, 0, -1);
        open.push(0, first);
        int best = Integer.MAX_VALUE;
        int bestState = -1;
        while (!open.isEmpty() && budget-- > 0) {
            int state = open.pop();
            int cell = state / 4;
            if (costs[state] + STEP * goal.stepsFrom(cell) >= best) {
                break;
            }
            if (goal.isAt(cell)) {
                int cost = costs[state] + goal.arrivalCost(Bearing.at(state % 4));
                if (cost < best) {
                    best = cost;
                    bestState = state;
                }
            } else {
                spread(state, goal, owner);
            }
        }
        return bestState < 0 ? Optional.empty() : Optional.of(traced(bestState));
    }

    private void note(int state, int cost, int from) {
        notedIn[state] = searches;
        costs[state] = cost;
        cameFrom[state] = from;
    }

    private void spread(int state, Goal goal, int owner) {
        int cell = state / 4;
        Bearing heading = Bearing.at(state % 4);
        for (int i = 0; i < 4; i++) {
            Bearing way = Bearing.at(i);
            int next = lattice.next(cell, way);
            if (next < 0 || lattice.isBlocked(next) && !goal.isAt(next)) {
                continue;
            }
            int cost = costs[state] + turn(heading, way) + stepCost(cell, next, way, owner);
            if (lattice.isPassedByOther(cell, owner) && !isPlainCrossing(cell, heading, way, owner)) {
                cost += KNEE;
            }
            int nextState = 4 * next + way.ordinal();
            if (notedIn[nextState] != searches || cost < costs[nextState]) {
                note(nextState, cost, state);
                open.push(cost + STEP * goal.stepsFrom(next), nextState);
            }
        }
    }

    /**
     * Whether a way goes straight over a stranger that goes straight too. Where either turns, one
     * could not see which of them goes where. Conductors that are joined anyway may meet as they
     * like.
     */
    private boolean isPlainCrossing(int cell, Bearing heading, Bearing way, int owner) {
        for (int i = 0; i < 4; i++) {
            Bearing side = Bearing.at(i);
            if (lattice.next(cell, side) >= 0) {
                int found = lattice.owner(cell, side);
                boolean stranger = found != Lattice.FREE && found != owner && kinship.applyAsInt(found, owner) == 0;
                boolean across = side.isHorizontal() != way.isHorizontal();
                if (stranger && (heading != way || !across)) {
                    return false;
                }
                if (!stranger && across && isPassedByStranger(cell, side, owner)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether a stranger comes to a cell from the other side but does not leave it on this. */
    private boolean isPassedByStranger(int cell, Bearing side, int owner) {
        Bearing opposite = side.opposite();
        if (lattice.next(cell, opposite) < 0) {
            return false;
        }
        int found = lattice.owner(cell, opposite);
        return found != Lattice.FREE && found != owner && kinship.applyAsInt(found, owner) == 0;
    }

    private int stepCost(int cell, int next, Bearing way, int owner) {
        int cost = STEP;
        int found = lattice.owner(cell, way);
        if (found != Lattice.FREE && found != owner) {
            cost += kinship.applyAsInt(found, owner) == 1 ? ALONG_KIN : ALONG_STRANGER;
        } else if (lattice.isPassedByOther(next, owner)) {
            cost += CROSSING;
        }
        cost += lattice.isLabelled(next) ? LABEL : 0;
        return cost + (lattice.isCrowded(next) ? CROWDED : 0);
    }

    private static int turn(Bearing from, Bearing to) {
        int quarters = from.quartersTo(to);
        return quarters == 0 ? 0 : quarters == 2 ? BACKWARD : BEND;
    }

    private List<Integer> traced(int end) {
        List<Integer> cells = new ArrayList<>();
        for (int state = end; state >= 0; state = cameFrom[state]) {
            cells.add(state / 4);
        }
        Collections.reverse(cells);
        return cells;
    }
}
