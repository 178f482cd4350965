package org.sagwise.picture.plot;

import java.util.List;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Stroke;

/** Paints the bands and lines of a chart. */
final class LinePainter {

    static final double MAIN_WIDTH = 2;
    static final int BAND_ALPHA = 70;

    private static final double THIN = 1;

    /** Turns up or down for each pixel to the right from which a line fills an area. */
    private static final double DENSE_TURNS = 0.33;

    private static final int DENSE_ALPHA = 120;

    /**
     * A curve as it is drawn.
     *
     * @param isDense whether it goes up and down so often that its strokes fill an area: dashes
     *     would only be noise, and what stands behind must show through
     */
    private record Line(Curve curve, Path path, boolean isDense) {}

    private final Chart chart;
    private final Frame frame;

    LinePainter(Chart chart, Frame frame) {
        this.chart = chart;
        this.frame = frame;
    }

    void paint(ThemedPen pen) {
        chart.bands().forEach(band -> fill(pen, band));
        draw(pen, Curve.Weight.BESIDE);
        draw(pen, Curve.Weight.MAIN);
    }

    /** A piece for each two neighbours, so that a gap stays one. */
    private void fill(ThemedPen pen, Band band) {
        Colour colour = band.series().colour().withAlpha(BAND_ALPHA);
        double[] x = band.x();
        for (int i = 0; i + 1 < x.length; i++) {
            if (Double.isFinite(band.low()[i] + band.high()[i] + band.low()[i + 1] + band.high()[i + 1])) {
                pen.fill(
                        Path.polygon(
                                frame.x(x[i]), frame.y(band.low()[i]),
                                frame.x(x[i + 1]), frame.y(band.low()[i + 1]),
                                frame.x(x[i + 1]), frame.y(band.high()[i + 1]),
                                frame.x(x[i]), frame.y(band.high()[i])),
                        colour);
            }
        }
    }

    /**
     * Dense ones first, the first curve in front; then lines, so that the dashes of a later one lie
     * on a whole earlier one and both are seen.
     */
    private void draw(ThemedPen pen, Curve.Weight weight) {
        List<Line> lines = chart.curves().stream()
                .filter(curve -> curve.weight() == weight)
                .map(this::line)
                .toList();
        for (int i = lines.size() - 1; i >= 0; i--) {
            if (lines.get(i).isDense()) {
                stroke(pen, lines.get(i));
            }
        }
        lines.stream().filter(line -> !line.isDense()).forEach(line -> stroke(pen, line));
    }

    private static void stroke(ThemedPen pen, Line line) {
        Curve curve = line.curve();
        Colour colour = curve.series().colour();
        pen.stroke(
                line.path(),
                line.isDense() ? colour.withAlpha(DENSE_ALPHA) : colour,
                line.isDense() || curve.weight() == Curve.Weight.BESIDE
                        ? Stroke.blunt(THIN)
                        : curve.series().stroke(MAIN_WIDTH));
    }

    private Line line(Curve curve) {
        Path.Builder path = new Path.Builder();
        int turns = 0;
        double way = 0;
        double before = Double.NaN;
        int columns = (int) Math.max(1, frame.area().width());
        for (Thinning.Point point : Thinning.of(curve, columns)) {
            double y = frame.y(point.value());
            if (Double.isFinite(y) && Double.isFinite(before)) {
                path.lineTo(frame.x(point.x()), y);
                if (Math.abs(y - before) > 1) {
                    turns += (y - before) * way < 0 ? 1 : 0;
                    way = y - before;
                }
            } else if (Double.isFinite(y)) {
                path.moveTo(frame.x(point.x()), y);
            }
            before = y;
        }
        return new Line(curve, path.build(), turns > DENSE_TURNS * frame.area().width());
    }
}
