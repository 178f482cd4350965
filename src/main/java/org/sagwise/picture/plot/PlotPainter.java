package org.sagwise.picture.plot;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;

/** Paints a chart: axes, what lies between them, where things stand now and what is pointed at. */
public final class PlotPainter {

    static final double GAP = 5;

    private static final double LEAST_TICK_DISTANCE = 2.2;
    private static final double KNOB = 5.5;

    /** How near to the present point a hand has to come to take it, pixels. */
    private static final double REACH = 14;

    private final Chart chart;
    private final Frame frame;
    private final NameRow names;
    private final double headRoom;
    private final PlotScale shades;

    /**
     * @param width of the whole picture, pixels
     * @param height of the whole picture, pixels
     */
    public PlotPainter(Chart chart, double textScale, double width, double height) {
        this.chart = chart;
        double line = TextStyle.SMALL.lineHeight(textScale);
        names = NameRow.of(chart, textScale, width - 2 * GAP);
        headRoom = names.height() + (chart.y().title().isEmpty() ? 0 : line);
        double top = headRoom + line / 2;
        double foot = line + GAP + (chart.x().title().isEmpty() ? 0 : line);
        double bottom = Math.max(top + 1, height - foot);
        int rows = (int) Math.max(2, (bottom - top) / (LEAST_TICK_DISTANCE * line));
        PlotScale up = chart.yScale(rows);
        shades = chart.field().map(field -> field.scale(Math.min(8, rows + 1))).orElse(up);
        double left = 2 * GAP + widest(up, chart.y().tick(), textScale);
        double right = width
                - GAP * 2
                - chart.field().map(it -> shadeRoom(it, textScale)).orElse(0.0);
        Box area = Box.between(left, top, Math.max(left + 1, right), bottom);
        frame = new Frame(area, chart.xScale((int) Math.max(1, area.width() / tickWidth(textScale))), up);
    }

    private double tickWidth(double textScale) {
        if (chart.x().reach() == Axis.Reach.TIME) {
            return TextStyle.SMALL.width(chart.x().tick().apply(35_990), textScale) * 1.6;
        }
        return GAP + 1.25 * widest(chart.xScale(5), chart.x().tick(), textScale);
    }

    private double shadeRoom(Field field, double textScale) {
        return FieldPainter.BAR + 4 * GAP + widest(shades, field.of().tick(), textScale);
    }

    private static double widest(PlotScale scale, DoubleFunction<String> word, double textScale) {
        return scale.ticks().stream()
                .mapToDouble(tick -> TextStyle.SMALL.width(word.apply(tick), textScale))
                .max()
                .orElse(0);
    }

    /** What lies under a place of the picture, in the values of the axes; empty outside of them. */
    public Optional<Point> at(double x, double y) {
        double across = (x - frame.area().x()) / frame.area().width();
        if (across < -0.02 || across > 1.02) {
            return Optional.empty();
        }
        return Optional.of(new Point(within(frame.valueAtX(x), frame.across()), within(frame.valueAtY(y), frame.up())));
    }

    private static double within(double value, PlotScale scale) {
        return Math.max(scale.from(), Math.min(scale.to(), value));
    }

    /**
     * Paints it all.
     *
     * @param now where things stand, in the values of the axes; its y may be NaN for a point on the
     *     first line
     * @param pointed what is pointed at
     */
    public void paint(ThemedPen pen, Optional<Point> now, Optional<Point> pointed) {
        chart.field().ifPresent(field -> new FieldPainter(field, shades, frame).paint(pen));
        grid(pen);
        names.paint(pen);
        pen.clipped(frame.area(), () -> new LinePainter(chart, frame).paint(pen));
        new MarkPainter(chart, frame).paint(pen);
        now.filter(point -> frame.across().holds(point.x())).ifPresent(point -> now(pen, point));
        pointed.ifPresent(point -> pointed(pen, point));
    }

    private void now(ThemedPen pen, Point now) {
        Box area = frame.area();
        double x = frame.x(now.x());
        if (chart.x().reach() == Axis.Reach.TIME) {
            if (chart.x().most() > 0) {
                pen.line(x, area.y(), x, area.bottom(), Tone.INK, 1.5);
            }
            return;
        }
        Point standing = chart.standing(now);
        double y = Math.max(area.y(), Math.min(area.bottom(), frame.y(standing.y())));
        if (Double.isNaN(y)) {
            pen.drawDashed(line(x, area.y(), x, area.bottom()), Tone.SAG, 1.5, 3, 3);
            return;
        }
        pen.drawDashed(line(x, y, x, area.bottom()), Tone.SAG, 1, 3, 3);
        pen.drawDashed(line(area.x(), y, x, y), Tone.SAG, 1, 3, 3);
        pen.shape(Oval.circle(x, y, KNOB), Tone.SAG, Tone.PAPER, 1.5);
    }

    private void pointed(ThemedPen pen, Point point) {
        Box area = frame.area();
        boolean isTime = chart.x().reach() == Axis.Reach.TIME;
        if (isTime && !(chart.x().most() > 0)) {
            return;
        }
        double x = frame.x(point.x());
        pen.drawDashed(line(x, area.y(), x, area.bottom()), Tone.INK, 1, 4, 3);
        if (chart.field().isPresent()) {
            double y = frame.y(point.y());
            pen.drawDashed(line(area.x(), y, area.right(), y), Tone.INK, 1, 4, 3);
        }
    }

    private static org.sagwise.picture.geometry.Line line(double x1, double y1, double x2, double y2) {
        return new org.sagwise.picture.geometry.Line(x1, y1, x2, y2);
    }

    private void grid(ThemedPen pen) {
        Box area = frame.area();
        double lineHeight = TextStyle.SMALL.lineHeight(pen.textScale());
        double textDrop = TextStyle.SMALL.size() * pen.textScale() * 0.35;
        for (double tick : frame.up().ticks()) {
            double y = frame.y(tick);
            if (chart.field().isEmpty()) {
                pen.line(area.x(), y, area.right(), y, Tone.PAPER_EDGE, 0.7);
            }
            pen.text(
                    chart.y().tick().apply(tick),
                    area.x() - GAP,
                    y + textDrop,
                    TextStyle.SMALL,
                    Tone.MUTED,
                    Align.RIGHT);
        }
        double foot = area.bottom() + lineHeight * 0.95;
        for (double tick : frame.across().ticks()) {
            double x = frame.x(tick);
            pen.line(x, area.bottom(), x, area.bottom() + GAP / 2, Tone.MUTED, 1);
            boolean atEdge = x > area.right() - GAP * 3;
            pen.text(
                    chart.x().tick().apply(tick),
                    x,
                    foot,
                    TextStyle.SMALL,
                    Tone.MUTED,
                    atEdge ? Align.RIGHT : Align.MIDDLE);
        }
        pen.line(area.x(), area.bottom(), area.right(), area.bottom(), Tone.MUTED, 1);
        pen.textWithin(
                chart.y().title(),
                GAP,
                headRoom - 0.25 * lineHeight,
                area.right() - GAP,
                TextStyle.SMALL_BOLD,
                Tone.INK,
                Align.LEFT);
        pen.textWithin(
                chart.x().title(),
                area.right(),
                foot + lineHeight,
                area.right() - GAP,
                TextStyle.SMALL_BOLD,
                Tone.INK,
                Align.RIGHT);
    }
}
