package org.sagwise.picture.plot;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.look.ColourScale;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;

/** Paints a field: colours from place to place, contours with their values, and the scale beside it. */
final class FieldPainter {

    /** Width of the scale of colours, pixels. */
    static final double BAR = 16;

    /** Steps of colour along the scale. */
    private static final int BAR_STEPS = 48;

    /** Patches of colour each way within four places, so that colours run smoothly. */
    private static final int PATCHES = 3;

    private final Field field;
    private final PlotScale shades;
    private final Frame frame;
    private final List<Box> labels = new ArrayList<>();

    FieldPainter(Field field, PlotScale shades, Frame frame) {
        this.field = field;
        this.shades = shades;
        this.frame = frame;
    }

    void paint(ThemedPen pen) {
        pen.clipped(frame.area(), () -> {
            for (int row = 0; row + 1 < field.y().length; row++) {
                for (int column = 0; column + 1 < field.x().length; column++) {
                    square(pen, column, row);
                }
            }
            shades.ticks().forEach(level -> contour(pen, level));
        });
        bar(pen);
    }

    private void square(ThemedPen pen, int column, int row) {
        double width = (field.x()[column + 1] - field.x()[column]) / PATCHES;
        double height = (field.y()[row + 1] - field.y()[row]) / PATCHES;
        for (int i = 0; i < PATCHES; i++) {
            for (int j = 0; j < PATCHES; j++) {
                double x = field.x()[column] + i * width;
                double y = field.y()[row] + j * height;
                double value = field.at(x + width / 2, y + height / 2);
                if (Double.isFinite(value)) {
                    // Half a pixel over each edge: neighbours must not show the ground between them.
                    Box patch = Box.between(frame.x(x), frame.y(y + height), frame.x(x + width), frame.y(y));
                    pen.fill(patch.grown(0.5), ColourScale.CIVIDIS.at(shades.share(value)));
                }
            }
        }
    }

    private void contour(ThemedPen pen, double level) {
        List<Contours.Piece> pieces = Contours.of(field, level);
        if (pieces.isEmpty()) {
            return;
        }
        Path.Builder path = new Path.Builder();
        for (Contours.Piece piece : pieces) {
            path.moveTo(frame.x(piece.x1()), frame.y(piece.y1()));
            path.lineTo(frame.x(piece.x2()), frame.y(piece.y2()));
        }
        pen.draw(path.build(), Tone.PAPER, 2.6);
        pen.draw(path.build(), Tone.INK, 1.1);
        label(pen, level, pieces);
    }

    /** Where contours lie so close that their words would cover each other, the later one goes without. */
    private void label(ThemedPen pen, double level, List<Contours.Piece> pieces) {
        Contours.Piece middle = pieces.get(pieces.size() / 2);
        String text = field.of().tick().apply(level);
        double half = TextStyle.SMALL.width(text, pen.textScale()) / 2 + 3;
        double line = TextStyle.SMALL.lineHeight(pen.textScale());
        Box area = frame.area();
        if (area.width() < 2 * half || area.height() < line) {
            return;
        }
        double x = Math.max(area.x() + half, Math.min(area.right() - half, frame.x(middle.x1())));
        double y = Math.max(area.y() + line / 2, Math.min(area.bottom() - line / 2, frame.y(middle.y1())));
        Box room = new Box(x - half, y - line / 2, 2 * half, line);
        if (labels.stream().anyMatch(room::intersects)) {
            return;
        }
        labels.add(room);
        pen.fill(room, Tone.PAPER);
        pen.text(text, x, y + 0.3 * line, TextStyle.SMALL, Tone.INK, Align.MIDDLE);
    }

    private void bar(ThemedPen pen) {
        Box area = frame.area();
        double left = area.right() + 2 * PlotPainter.GAP;
        double step = area.height() / BAR_STEPS;
        for (int i = 0; i < BAR_STEPS; i++) {
            pen.fill(
                    new Box(left, area.bottom() - (i + 1) * step, BAR, step + (i > 0 ? 0.5 : 0)),
                    ColourScale.CIVIDIS.at((i + 0.5) / BAR_STEPS));
        }
        double drop = TextStyle.SMALL.size() * pen.textScale() * 0.35;
        for (double tick : shades.ticks()) {
            double y = area.bottom() - shades.share(tick) * area.height();
            pen.line(left + BAR, y, left + BAR + PlotPainter.GAP / 2, y, Tone.MUTED, 1);
            pen.text(
                    field.of().tick().apply(tick),
                    left + BAR + PlotPainter.GAP,
                    y + drop,
                    TextStyle.SMALL,
                    Tone.MUTED,
                    Align.LEFT);
        }
    }
}
