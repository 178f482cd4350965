package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;

/** Leads the thin wires of a meter in the hand around parts and figures. */
final class LeadRouter {

    /** Owner of leads on the lattice; no conductor of the bench has this number. */
    private static final int LEAD = -3;

    private final Lattice lattice;
    private final WaySearch search;

    LeadRouter(Lattice lattice, WaySearch search) {
        this.lattice = lattice;
        this.search = search;
    }

    /**
     * Corners from the rim of the display to the place from where the probe reaches over.
     *
     * @param shift how far from the middle of a rim the lead begins
     */
    List<GridPoint> lead(GridBox card, TerminalPoint to, int shift) {
        List<Integer> ends = handles(to);
        List<GridPoint> best = List.of();
        int fewest = Integer.MAX_VALUE;
        for (Bearing out : Bearing.values()) {
            GridPoint rim = rim(card, out, shift);
            Optional<List<Integer>> way = way(rim, out, ends);
            if (way.isPresent() && cost(way.get()) < fewest) {
                fewest = cost(way.get());
                best = points(rim, out, way.get());
            }
        }
        return best.isEmpty() ? straight(card, to) : best;
    }

    private Optional<List<Integer>> way(GridPoint rim, Bearing out, List<Integer> ends) {
        int x = Spot.toLattice(rim.x());
        int y = Spot.toLattice(rim.y());
        if (ends.isEmpty() || !lattice.holds(x, y)) {
            return Optional.empty();
        }
        int start = lattice.cell(x, y);
        return lattice.isBlocked(start) ? Optional.empty() : search.find(start, out, goal(ends), LEAD);
    }

    /** Free cells beside a terminal, off the way by which its conductors leave. */
    private List<Integer> handles(TerminalPoint to) {
        List<Integer> cells = new ArrayList<>();
        for (int side : new int[] {1, -1}) {
            Bearing aside = to.out().turned(side);
            for (int out : new int[] {1, 2}) {
                int x = to.x() + Lattice.STEP * (2 * aside.dx() + out * to.out().dx());
                int y = to.y() + Lattice.STEP * (2 * aside.dy() + out * to.out().dy());
                if (!lattice.holds(x, y)) {
                    continue;
                }
                int cell = lattice.cell(x, y);
                if (!lattice.isBlocked(cell) && !lattice.isPassedByOther(cell, LEAD)) {
                    cells.add(cell);
                    break;
                }
            }
        }
        return cells;
    }

    private WaySearch.Goal goal(List<Integer> ends) {
        return new WaySearch.Goal() {
            @Override
            public boolean isAt(int cell) {
                return ends.contains(cell);
            }

            @Override
            public int stepsFrom(int cell) {
                return ends.stream()
                        .mapToInt(end -> lattice.steps(cell, end))
                        .min()
                        .orElse(0);
            }

            @Override
            public int arrivalCost(Bearing way) {
                return 0;
            }
        };
    }

    /** Length, and as much more for every cell under a figure. */
    private int cost(List<Integer> way) {
        return way.size() + 8 * (int) way.stream().filter(lattice::isLabelled).count();
    }

    private List<GridPoint> points(GridPoint rim, Bearing out, List<Integer> way) {
        List<GridPoint> points = new ArrayList<>(List.of(rim));
        for (int cell : way) {
            points.add(new GridPoint(lattice.x(cell), lattice.y(cell)));
        }
        GridPoint second = points.get(1);
        int shifted = out.isHorizontal() ? rim.y() - second.y() : rim.x() - second.x();
        for (int i = 1; i < points.size(); i++) {
            GridPoint point = points.get(i);
            boolean first = out.isHorizontal() ? point.y() == second.y() : point.x() == second.x();
            if (!first) {
                break;
            }
            points.set(
                    i,
                    out.isHorizontal()
                            ? new GridPoint(point.x(), point.y() + shifted)
                            : new GridPoint(point.x() + shifted, point.y()));
        }
        return Corners.of(points);
    }

    private static GridPoint rim(GridBox card, Bearing out, int shift) {
        return new GridPoint(
                (int) card.middleX() + out.dx() * card.width() / 2 + Math.abs(out.dy()) * shift,
                (int) card.middleY() + out.dy() * card.height() / 2 + Math.abs(out.dx()) * shift);
    }

    private static List<GridPoint> straight(GridBox card, TerminalPoint to) {
        int aside = card.middleX() < to.x() ? -1 : 1;
        return List.of(
                new GridPoint((int) card.middleX(), (int) card.middleY()),
                new GridPoint(to.x() + aside * 2 * Lattice.STEP, to.y()));
    }
}
