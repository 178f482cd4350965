package org.sagwise.picture.layout;

import java.util.Arrays;
import java.util.List;
import org.sagwise.picture.geometry.GridBox;

/** The lattice on which conductors run, with what stands in their way. Cells have numbers. */
final class Lattice {

    static final int STEP = PartShape.LATTICE;
    private static final int AROUND = 8 * STEP;
    private static final int CLEARANCE = STEP / 2;

    private static final int MOST_CELLS = 1_000_000;

    private static final int SEVERAL = -2;

    /** Neither conductor. */
    static final int FREE = -1;

    private final int left;
    private final int top;
    private final int columns;
    private final int rows;
    private final boolean[] blocked;
    private final boolean[] crowded;
    private final boolean[] labelled;
    private final int[] passer;
    private final int[] ownerRight;
    private final int[] ownerDown;

    Lattice(List<PartBox> parts) {
        GridBox all = extent(parts);
        this.left = Math.floorDiv(all.x() - AROUND, STEP) * STEP;
        this.top = Math.floorDiv(all.y() - AROUND, STEP) * STEP;
        this.columns = (all.x() + all.width() + AROUND - left) / STEP + 1;
        this.rows = (all.y() + all.height() + AROUND - top) / STEP + 1;
        this.blocked = new boolean[columns * rows];
        this.crowded = new boolean[columns * rows];
        this.labelled = new boolean[columns * rows];
        this.passer = filled();
        this.ownerRight = filled();
        this.ownerDown = filled();
        for (PartBox part : parts) {
            mark(part.body(), CLEARANCE, blocked);
            mark(part.body(), STEP + CLEARANCE, crowded);
            mark(part.label(), 2, labelled);
        }
    }

    /** Whether parts lie so far apart that no lattice can span them. */
    static boolean isTooLargeFor(List<PartBox> parts) {
        GridBox all = extent(parts);
        double across = (all.width() + 2.0 * AROUND) / STEP;
        return across * (all.height() + 2.0 * AROUND) / STEP > MOST_CELLS;
    }

    private static GridBox extent(List<PartBox> parts) {
        return parts.stream()
                .map(part -> part.body().union(part.label()))
                .reduce(GridBox::union)
                .orElseGet(() -> new GridBox(0, 0, 1, 1));
    }

    private int[] filled() {
        int[] owners = new int[columns * rows];
        Arrays.fill(owners, FREE);
        return owners;
    }

    private void mark(GridBox area, int margin, boolean[] marks) {
        GridBox grown = area.grown(margin);
        int firstColumn = Math.max(0, Math.floorDiv(grown.x() - left, STEP) + 1);
        int lastColumn = Math.min(columns - 1, Math.floorDiv(grown.x() + grown.width() - left - 1, STEP));
        int firstRow = Math.max(0, Math.floorDiv(grown.y() - top, STEP) + 1);
        int lastRow = Math.min(rows - 1, Math.floorDiv(grown.y() + grown.height() - top - 1, STEP));
        for (int row = firstRow; row <= lastRow; row++) {
            Arrays.fill(marks, row * columns + firstColumn, row * columns + lastColumn + 1, true);
        }
    }

    int size() {
        return columns * rows;
    }

    int cell(int x, int y) {
        return (y - top) / STEP * columns + (x - left) / STEP;
    }

    /** Whether a point lies on the lattice: what is far from all parts does not. */
    boolean holds(int x, int y) {
        int column = Math.floorDiv(x - left, STEP);
        int row = Math.floorDiv(y - top, STEP);
        return column >= 0 && row >= 0 && column < columns && row < rows;
    }

    int x(int cell) {
        return left + cell % columns * STEP;
    }

    int y(int cell) {
        return top + cell / columns * STEP;
    }

    /** The neighbouring cell, or -1 at the edge. */
    int next(int cell, Bearing way) {
        int column = cell % columns + way.dx();
        int row = cell / columns + way.dy();
        return column < 0 || row < 0 || column >= columns || row >= rows ? -1 : row * columns + column;
    }

    int steps(int one, int other) {
        return Math.abs(one % columns - other % columns) + Math.abs(one / columns - other / columns);
    }

    boolean isBlocked(int cell) {
        return blocked[cell];
    }

    boolean isCrowded(int cell) {
        return crowded[cell];
    }

    boolean isLabelled(int cell) {
        return labelled[cell];
    }

    /** Which conductor runs from a cell to its neighbour, or {@link #FREE}. */
    int owner(int cell, Bearing way) {
        return switch (way) {
            case RIGHT -> ownerRight[cell];
            case DOWN -> ownerDown[cell];
            case LEFT -> ownerRight[cell - 1];
            case UP -> ownerDown[cell - columns];
        };
    }

    /** Whether any conductor but this one passes a cell. */
    boolean isPassedByOther(int cell, int owner) {
        return passer[cell] != FREE && passer[cell] != owner;
    }

    /** The cell where a way with one corner turns, level first. */
    int corner(int from, int to) {
        return from / columns * columns + to % columns;
    }

    /** Marks a way as somebody's, but for gaps in it. */
    void claim(List<Integer> cells, int owner) {
        for (int i = 1; i < cells.size(); i++) {
            if (steps(cells.get(i - 1), cells.get(i)) == 1) {
                claim(cells.get(i - 1), cells.get(i), owner);
            }
        }
    }

    private void claim(int cell, int neighbour, int owner) {
        pass(cell, owner);
        pass(neighbour, owner);
        int first = Math.min(cell, neighbour);
        if (Math.abs(cell - neighbour) == 1) {
            ownerRight[first] = owner;
        } else {
            ownerDown[first] = owner;
        }
    }

    private void pass(int cell, int owner) {
        passer[cell] = passer[cell] == FREE || passer[cell] == owner ? owner : SEVERAL;
    }
}
