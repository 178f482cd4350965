package org.sagwise.picture.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.sagwise.picture.look.Align;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;

/** Paints a chart: axes, lines, the moment that is shown and the one that is pointed at. */
public final class PlotPainter {

    private static final double GAP = 5;
    private static final double LEAST_TICK_DISTANCE = 2.2;
    private static final float MAIN_WIDTH = 2;
    private static final float THIN = 1;

    /** Turns up or down for each pixel to the right from which a line is a band. */
    private static final double BAND_TURNS = 0.33;

    private static final int BAND_ALPHA = 120;

    /**
     * A curve as it is drawn.
     *
     * @param isBand whether it goes up and down so often that its strokes fill an area: dashes
     *     would only be noise, and what stands behind must show through
     */
    private record Line(Curve curve, Path2D path, boolean isBand) {}

    private final Chart chart;
    private final Rectangle2D area;
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
        area = new Rectangle2D.Double(left, line / 2, right - left, bottom - line / 2);
        double timeWidth = TextStyle.SMALL.width(words.time().apply(35_990), textScale) * 1.6;
        time = PlotScale.ofTime(chart.endS(), (int) Math.max(1, area.getWidth() / timeWidth));
    }

    private static double widest(PlotScale scale, DoubleFunction<String> word, double textScale) {
        return scale.ticks().stream()
                .mapToDouble(tick -> TextStyle.SMALL.width(word.apply(tick), textScale))
                .max()
                .orElse(0);
    }

    /** The moment under a place of the picture, s; empty outside the axes. */
    public OptionalDouble momentAt(double x) {
        double share = (x - area.getX()) / area.getWidth();
        return share < -0.02 || share > 1.02
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, Math.min(chart.endS(), time.valueAt(share))));
    }

    public void paint(Graphics2D graphics, Pen pen, double nowS, OptionalDouble pointedS) {
        grid(pen);
        Shape before = graphics.getClip();
        graphics.clip(area);
        draw(graphics, Curve.Weight.BESIDE);
        draw(graphics, Curve.Weight.MAIN);
        graphics.setClip(before);
        if (chart.endS() > 0) {
            upright(pen, nowS, 1.5);
            pointedS.ifPresent(moment -> dashed(pen, moment));
        }
    }

    /**
     * Bands first, the first curve in front; then lines, so that the dashes of a later one lie on a
     * whole earlier one and both are seen.
     */
    private void draw(Graphics2D graphics, Curve.Weight weight) {
        List<Line> lines = chart.curves().stream()
                .filter(curve -> curve.weight() == weight)
                .map(this::line)
                .toList();
        for (int i = lines.size() - 1; i >= 0; i--) {
            if (lines.get(i).isBand()) {
                stroke(graphics, lines.get(i));
            }
        }
        lines.stream().filter(line -> !line.isBand()).forEach(line -> stroke(graphics, line));
    }

    private void stroke(Graphics2D graphics, Line line) {
        Curve curve = line.curve();
        Color colour = curve.series().colour();
        graphics.setColor(line.isBand() ? translucent(colour) : colour);
        graphics.setStroke(
                line.isBand() || curve.weight() == Curve.Weight.BESIDE
                        ? new BasicStroke(THIN)
                        : curve.series().stroke(MAIN_WIDTH));
        graphics.draw(line.path());
    }

    private void grid(Pen pen) {
        double textDrop = TextStyle.SMALL.size() * pen.textScale() * 0.35;
        for (double tick : values.ticks()) {
            double y = y(tick);
            pen.line(area.getX(), y, area.getMaxX(), y, Tone.PAPER_EDGE, 0.7);
            pen.text(
                    words.value().apply(tick),
                    area.getX() - GAP,
                    y + textDrop,
                    TextStyle.SMALL,
                    Tone.MUTED,
                    Align.RIGHT);
        }
        double foot = area.getMaxY() + TextStyle.SMALL.lineHeight(pen.textScale()) * 0.95;
        for (double tick : time.ticks()) {
            double x = x(tick);
            pen.line(x, area.getMaxY(), x, area.getMaxY() + GAP / 2, Tone.MUTED, 1);
            boolean atEdge = x > area.getMaxX() - GAP * 3;
            pen.text(
                    words.time().apply(tick),
                    x,
                    foot,
                    TextStyle.SMALL,
                    Tone.MUTED,
                    atEdge ? Align.RIGHT : Align.MIDDLE);
        }
        pen.line(area.getX(), area.getMaxY(), area.getMaxX(), area.getMaxY(), Tone.MUTED, 1);
    }

    private Line line(Curve curve) {
        Path2D path = new Path2D.Double();
        int turns = 0;
        double way = 0;
        double before = Double.NaN;
        for (Thinning.Point point : Thinning.of(curve, (int) Math.max(1, area.getWidth()))) {
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
        return new Line(curve, path, turns > BAND_TURNS * area.getWidth());
    }

    private static Color translucent(Color colour) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), BAND_ALPHA);
    }

    private void upright(Pen pen, double momentS, double width) {
        pen.line(x(momentS), area.getY(), x(momentS), area.getMaxY(), Tone.INK, width);
    }

    private void dashed(Pen pen, double momentS) {
        double x = x(momentS);
        pen.drawDashed(new Line2D.Double(x, area.getY(), x, area.getMaxY()), Tone.INK, 1, 4, 3);
    }

    private double x(double momentS) {
        return area.getX() + time.share(momentS) * area.getWidth();
    }

    private double y(double value) {
        return area.getMaxY() - values.share(value) * area.getHeight();
    }
}
