package org.sagwise.picture.plot;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Stroke;

/** Paints a chart: axes, lines, the moment that is shown and the one that is pointed at. */
public final class PlotPainter {

    private static final double GAP = 5;
    private static final double LEAST_TICK_DISTANCE = 2.2;
    private static final double MAIN_WIDTH = 2;
    private static final double THIN = 1;

    /** Turns up or down for each pixel to the right from which a line is a band. */
    private static final double BAND_TURNS = 0.33;

    private static final int BAND_ALPHA = 120;

    /**
     * A curve as it is drawn.
     *
     * @param isBand whether it goes up and down so often that its strokes fill an area: dashes
     *     would only be noise, and what stands behind must show through
     */
    private record Line(Curve curve, Path path, boolean isBand) {}

    private final Chart chart;
    private final Box area;
    private final PlotScale time;
    private final PlotScale values;
    private final PlotWords words;

    /**
     * @param width of the whole picture, pixels
     * @param height of the whole picture, pixels
     */
    public PlotPainter(Chart chart, PlotWords words, double textScale, double width, double height) {
        this.chart = chart;
        this.words = words;
        double line = TextStyle.SMALL.lineHeight(textScale);
        double bottom = Math.max(line, height - line - GAP);
        int rows = (int) Math.max(2, (bottom - line / 2) / (LEAST_TICK_DISTANCE * line));
        values = chart.values(rows);
        double left = GAP + widest(values, words.value(), textScale);
        double right = Math.max(left + 1, width - GAP * 2);
        area = new Box(left, line / 2, right - left, bottom - line / 2);
        double timeWidth = TextStyle.SMALL.width(words.time().apply(35_990), textScale) * 1.6;
        time = PlotScale.ofTime(chart.endS(), (int) Math.max(1, area.width() / timeWidth));
    }

    private static double widest(PlotScale scale, DoubleFunction<String> word, double textScale) {
        return scale.ticks().stream()
                .mapToDouble(tick -> TextStyle.SMALL.width(word.apply(tick), textScale))
                .max()
                .orElse(0);
    }

    /** The moment under a place of the picture, s; empty outside the axes. */
    public OptionalDouble momentAt(double x) {
        double share = (x - area.x()) / area.width();
        return share < -0.02 || share > 1.02
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, Math.min(chart.endS(), time.valueAt(share))));
    }

    public void paint(ThemedPen pen, double nowS, OptionalDouble pointedS) {
        grid(pen);
        pen.clipped(area, () -> {
            draw(pen, Curve.Weight.BESIDE);
            draw(pen, Curve.Weight.MAIN);
        });
        if (chart.endS() > 0) {
            upright(pen, nowS, 1.5);
            pointedS.ifPresent(moment -> dashed(pen, moment));
        }
    }

    /**
     * Bands first, the first curve in front; then lines, so that the dashes of a later one lie on a
     * whole earlier one and both are seen.
     */
    private void draw(ThemedPen pen, Curve.Weight weight) {
        List<Line> lines = chart.curves().stream()
                .filter(curve -> curve.weight() == weight)
                .map(this::line)
                .toList();
        for (int i = lines.size() - 1; i >= 0; i--) {
            if (lines.get(i).isBand()) {
                stroke(pen, lines.get(i));
            }
        }
        lines.stream().filter(line -> !line.isBand()).forEach(line -> stroke(pen, line));
    }

    private void stroke(ThemedPen pen, Line line) {
        Curve curve = line.curve();
        Colour colour = curve.series().colour();
        pen.stroke(
                line.path(),
                line.isBand() ? colour.withAlpha(BAND_ALPHA) : colour,
                line.isBand() || curve.weight() == Curve.Weight.BESIDE
                        ? Stroke.blunt(THIN)
                        : curve.series().stroke(MAIN_WIDTH));
    }

    private void grid(ThemedPen pen) {
        double textDrop = TextStyle.SMALL.size() * pen.textScale() * 0.35;
        for (double tick : values.ticks()) {
            double y = y(tick);
            pen.line(area.x(), y, area.right(), y, Tone.PAPER_EDGE, 0.7);
            pen.text(words.value().apply(tick), area.x() - GAP, y + textDrop, TextStyle.SMALL, Tone.MUTED, Align.RIGHT);
        }
        double foot = area.bottom() + TextStyle.SMALL.lineHeight(pen.textScale()) * 0.95;
        for (double tick : time.ticks()) {
            double x = x(tick);
            pen.line(x, area.bottom(), x, area.bottom() + GAP / 2, Tone.MUTED, 1);
            boolean atEdge = x > area.right() - GAP * 3;
            pen.text(
                    words.time().apply(tick),
                    x,
                    foot,
                    TextStyle.SMALL,
                    Tone.MUTED,
                    atEdge ? Align.RIGHT : Align.MIDDLE);
        }
        pen.line(area.x(), area.bottom(), area.right(), area.bottom(), Tone.MUTED, 1);
    }

    private Line line(Curve curve) {
        Path.Builder path = new Path.Builder();
        int turns = 0;
        double way = 0;
        double before = Double.NaN;
        for (Thinning.Point point : Thinning.of(curve, (int) Math.max(1, area.width()))) {
            double y = y(point.value());
            if (Double.isFinite(y) && Double.isFinite(before)) {
                path.lineTo(x(point.timeS()), y);
                if (Math.abs(y - before) > 1) {
                    turns += (y - before) * way < 0 ? 1 : 0;
                    way = y - before;
                }
            } else if (Double.isFinite(y)) {
                path.moveTo(x(point.timeS()), y);
            }
            before = y;
        }
        return new Line(curve, path.build(), turns > BAND_TURNS * area.width());
    }

    private void upright(ThemedPen pen, double momentS, double width) {
        pen.line(x(momentS), area.y(), x(momentS), area.bottom(), Tone.INK, width);
    }

    private void dashed(ThemedPen pen, double momentS) {
        double x = x(momentS);
        pen.drawDashed(new org.sagwise.picture.geometry.Line(x, area.y(), x, area.bottom()), Tone.INK, 1, 4, 3);
    }

    private double x(double momentS) {
        return area.x() + time.share(momentS) * area.width();
    }

    private double y(double value) {
        return area.bottom() - values.share(value) * area.height();
    }
}
