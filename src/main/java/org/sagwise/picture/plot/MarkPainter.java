package org.sagwise.picture.plot;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;

/** Paints limits and single points of a chart, each with its words where they have room. */
final class MarkPainter {

    private static final double DOT = 6;
    private static final double RING = 10;
    private static final int MOST_ROWS = 3;

    private final Chart chart;
    private final Frame frame;
    private final List<Box> taken = new ArrayList<>();

    MarkPainter(Chart chart, Frame frame) {
        this.chart = chart;
        this.frame = frame;
    }

    void paint(ThemedPen pen) {
        List<Limit> seen = chart.limits().stream()
                .filter(it -> (isLevel(it) ? frame.up() : frame.across()).holds(it.at()))
                .toList();
        seen.forEach(limit -> line(pen, limit));
        seen.forEach(limit -> words(pen, limit));
        chart.marks().stream()
                .filter(mark -> Double.isFinite(mark.x() + mark.y()))
                .forEach(mark -> taken.add(around(mark, DOT)));
        chart.marks().forEach(mark -> dot(pen, mark));
        chart.marks().stream().filter(Mark::isChosen).forEach(mark -> words(pen, mark));
        chart.marks().stream().filter(mark -> !mark.isChosen()).forEach(mark -> words(pen, mark));
    }

    private static boolean isLevel(Limit limit) {
        return limit.way() == Limit.Way.LEVEL;
    }

    private void line(ThemedPen pen, Limit limit) {
        Box area = frame.area();
        double x = frame.x(limit.at());
        double y = frame.y(limit.at());
        Line line = isLevel(limit) ? new Line(area.x(), y, area.right(), y) : new Line(x, area.y(), x, area.bottom());
        pen.drawDashed(line, Tone.FLAG, 1.3, 7, 4);
    }

    private void words(ThemedPen pen, Limit limit) {
        Box area = frame.area();
        double line = TextStyle.SMALL.lineHeight(pen.textScale());
        String text = pen.shortened(limit.label(), 0.6 * area.width(), TextStyle.SMALL);
        double width = TextStyle.SMALL.width(text, pen.textScale());
        if (isLevel(limit)) {
            double y = frame.y(limit.at());
            double base = y - 0.25 * line < area.y() + line ? y + line : y - 0.25 * line;
            if (isFree(new Box(area.right() - width - 2, base - 0.8 * line, width, line))) {
                write(pen, text, area.right() - width - 2, base);
            }
            return;
        }
        double x = frame.x(limit.at());
        double left = x + 4 + width > area.right() ? x - 4 - width : x + 4;
        // Three rows of words at most: more would bury the curve, and all of them stand in words beside it.
        double lowest = Math.min(area.bottom() - line / 2, area.y() + (MOST_ROWS + 0.5) * line);
        for (double base = area.y() + line; base < lowest; base += line) {
            if (isFree(new Box(left, base - line, width, line))) {
                write(pen, text, left, base - 0.2 * line);
                return;
            }
        }
    }

    private void write(ThemedPen pen, String text, double left, double base) {
        double line = TextStyle.SMALL.lineHeight(pen.textScale());
        double width = TextStyle.SMALL.width(text, pen.textScale());
        Box room = new Box(left, base - 0.8 * line, width, line);
        taken.add(room);
        ground(pen, room);
        pen.text(text, left, base, TextStyle.SMALL, Tone.FLAG, Align.LEFT);
    }

    /** Lines of the grid pass behind words, not through them. */
    private static void ground(ThemedPen pen, Box room) {
        pen.fill(room.grown(1, -1), pen.colour(Tone.PAPER).withAlpha(215));
    }

    private boolean isFree(Box room) {
        return taken.stream().noneMatch(room::intersects);
    }

    private Box around(Mark mark, double reach) {
        return new Box(frame.x(mark.x()), frame.y(mark.y()), 0, 0).grown(reach);
    }

    private Oval oval(Mark mark, double radius) {
        return Oval.circle(frame.x(mark.x()), frame.y(mark.y()), radius);
    }

    /** A ring filled from its foot, as the level of a cell is. */
    private void dot(ThemedPen pen, Mark mark) {
        Box room = around(mark, DOT);
        if (!room.isDrawable()) {
            return;
        }
        double share = Math.max(0, Math.min(1, mark.share()));
        pen.fill(oval(mark, DOT), Tone.PAPER);
        pen.clipped(
                new Box(room.x(), room.bottom() - share * room.height(), room.width(), share * room.height()),
                () -> pen.fill(oval(mark, DOT), mark.series().colour()));
        pen.draw(oval(mark, DOT), mark.series().colour(), 1.6);
        if (mark.isChosen()) {
            pen.draw(oval(mark, RING), Tone.CHOSEN, 2);
        }
    }

    private void words(ThemedPen pen, Mark mark) {
        double width = TextStyle.SMALL.width(mark.label(), pen.textScale());
        double line = TextStyle.SMALL.lineHeight(pen.textScale());
        Box dot = around(mark, mark.isChosen() ? RING : DOT);
        if (mark.label().isEmpty() || !dot.isDrawable()) {
            return;
        }
        List<Box> rooms = List.of(
                new Box(dot.right() + 2, dot.middleY() - line / 2, width, line),
                new Box(dot.x() - 2 - width, dot.middleY() - line / 2, width, line),
                new Box(dot.middleX() - width / 2, dot.y() - line, width, line),
                new Box(dot.middleX() - width / 2, dot.bottom(), width, line));
        rooms.stream()
                .filter(room -> frame.area().contains(room) && isFree(room))
                .findFirst()
                .ifPresent(room -> {
                    taken.add(room);
                    ground(pen, room);
                    pen.text(mark.label(), room.x(), room.y() + 0.75 * line, TextStyle.SMALL, Tone.INK, Align.LEFT);
                });
    }
}
