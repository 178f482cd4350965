package org.sagwise.picture.stairs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.reading.Staircase.Kind;

/** Writes names and volts to steps, the large ones first; what finds no room is left out. */
final class StairLabels {

    private static final double GAP = 3;
    private static final double LEAST_V = 0.5e-3;

    private final ThemedPen pen;
    private final StairAxis axis;
    private final StairWords words;
    private final Box room;
    private final List<Box> panels;
    private final double leastHeight;
    private final List<Box> taken = new ArrayList<>();

    /**
     * @param room where words may stand
     * @param panels grounds of lanes
     * @param leastHeight joints and small parts whose step is lower, in pixels, stay unnamed
     */
    StairLabels(ThemedPen pen, StairAxis axis, StairWords words, Box room, List<Box> panels, double leastHeight) {
        this.pen = pen;
        this.axis = axis;
        this.words = words;
        this.room = room;
        this.panels = panels;
        this.leastHeight = leastHeight;
    }

    /** Keeps words off a level line. */
    void keepOff(StairPlan.Bridge bridge) {
        double y = axis.y(bridge.potentialV());
        taken.add(new Box(bridge.from(), y - 2, bridge.to() - bridge.from(), 4));
    }

    void write(List<Column> columns) {
        columns.stream()
                .sorted(Comparator.comparingInt(
                                (Column column) -> rank(column.step().kind()))
                        .thenComparing(column -> -Math.abs(column.step().riseV())))
                .filter(this::isWorthNaming)
                .forEach(column -> write(column, columns));
    }

    /** Where words were written, and what was kept free. */
    List<Box> places() {
        return List.copyOf(taken);
    }

    private boolean isWorthNaming(Column column) {
        double rise = Math.abs(column.step().riseV());
        boolean small = rank(column.step().kind()) == 2;
        return rise >= LEAST_V && (!small || rise * axis.perVolt() >= leastHeight);
    }

    private static int rank(Kind kind) {
        return switch (kind.sort()) {
            case SOURCE, LOAD, GAP -> 0;
            case SAG -> 1;
            case JOINT, IN_LINE -> 2;
        };
    }

    private void write(Column column, List<Column> all) {
        String name = words.name(column.step());
        String volts = words.volts(Math.abs(column.step().riseV()));
        Box block = column.block(axis);
        double line = TextStyle.SMALL.lineHeight(pen.textScale());
        double both = Math.max(
                TextStyle.SMALL_BOLD.width(name, pen.textScale()), TextStyle.SMALL.width(volts, pen.textScale()));
        if (both + 6 <= block.width() && 2 * line + 6 <= block.height()) {
            twoLines(column, block, name, volts, line);
            return;
        }
        String one = name + " " + volts;
        double width = TextStyle.SMALL_BOLD.width(one, pen.textScale());
        boolean fits = width + 6 <= block.width() && line + 4 <= block.height();
        if (fits && !isHatched(column)) {
            put(one, column, block.middleY() + 0.32 * line);
            taken.add(block);
            return;
        }
        double above = block.y() - GAP - 0.25 * line;
        double below = block.bottom() + GAP + 0.8 * line;
        if (tryAt(one, column, above, width, line, all) || tryAt(one, column, below, width, line, all)) {
            return;
        }
        double alone = TextStyle.SMALL_BOLD.width(name, pen.textScale());
        if (alone + 4 <= block.width() && line + 4 <= block.height()) {
            put(name, column, block.middleY() + 0.32 * line);
            taken.add(block);
        }
    }

    private void twoLines(Column column, Box block, String name, String volts, double line) {
        double y = block.middleY() - 0.1 * line;
        if (isHatched(column)) {
            double wide = Math.max(
                    TextStyle.SMALL_BOLD.width(name, pen.textScale()), TextStyle.SMALL.width(volts, pen.textScale()));
            pen.plate(
                    new Box(column.middle() - wide / 2 - 5, y - line, wide + 10, 2.35 * line),
                    5,
                    Tone.PAPER,
                    Tone.PAPER,
                    0);
        }
        Tone ink = column.step().kind() == Kind.GAP ? Tone.MUTED : Tone.INK;
        pen.text(name, column.middle(), y, TextStyle.SMALL_BOLD, ink, Align.MIDDLE);
        pen.text(volts, column.middle(), y + line, TextStyle.SMALL, ink, Align.MIDDLE);
        taken.add(block);
    }

    private static boolean isHatched(Column column) {
        Kind kind = column.step().kind();
        return kind == Kind.SAG || StairOrder.isSource(kind) && column.step().riseV() < 0;
    }

    private boolean tryAt(String text, Column column, double y, double width, double line, List<Column> all) {
        Box place = new Box(column.middle() - width / 2 - 2, y - 0.8 * line, width + 4, line);
        boolean free = room.contains(place)
                && taken.stream().noneMatch(place::intersects)
                && all.stream().noneMatch(other -> covers(other, place));
        if (free) {
            panels.forEach(panel -> clearEdges(panel, place));
            put(text, column, y);
            taken.add(place);
        }
        return free;
    }

    /** The edges of a panel do not go through words. */
    private void clearEdges(Box panel, Box place) {
        for (double x : new double[] {panel.x(), panel.right()}) {
            Box edge =
                    new Box(x - 1, place.y(), 2, place.height()).common(place).common(panel.grown(1));
            if (edge.area() > 0) {
                pen.fill(edge, Tone.LEVEL_GROUND);
            }
        }
    }

    /** Whether a step's block or the line over it lies under a place. */
    private boolean covers(Column column, Box place) {
        Box block = column.block(axis);
        Box seen = new Box(block.x(), block.y() - 1.5, block.width(), block.height() + 3);
        return seen.intersects(place);
    }

    private void put(String text, Column column, double y) {
        pen.text(
                text,
                column.middle(),
                y,
                TextStyle.SMALL_BOLD,
                StairInk.ink(column.step().kind()),
                Align.MIDDLE);
    }
}
