package org.sagwise.picture.schematic;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.geometry.Shape;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;

/** Draws about the middle of a part, turned with it; letters stay upright. */
final class SymbolPen {

    private static final Tone INK = Tone.CONDUCTOR_EDGE;
    private static final double BAR = 7;

    private final ThemedPen pen;
    private final PartBox box;

    SymbolPen(ThemedPen pen, PartBox box) {
        this.pen = pen;
        this.box = box;
    }

    void line(double x1, double y1, double x2, double y2) {
        draw(new Line(x1, y1, x2, y2), SchematicPainter.LINE);
    }

    void thinLine(double x1, double y1, double x2, double y2) {
        draw(new Line(x1, y1, x2, y2), 1.6);
    }

    /** A thick line with blunt ends. */
    void bar(double x1, double y1, double x2, double y2) {
        turned(() -> pen.drawBlunt(new Line(x1, y1, x2, y2), pen.colour(INK), BAR));
    }

    void dashed(double x1, double y1, double x2, double y2) {
        turned(() -> pen.drawDashed(new Line(x1, y1, x2, y2), INK, 1.8, 5, 4));
    }

    /** A rectangle about the middle. */
    void box(double halfWidth, double halfHeight) {
        outline(new Box(-halfWidth, -halfHeight, 2 * halfWidth, 2 * halfHeight));
    }

    /** A filled circle with an outline. */
    void circle(double x, double y, double radius) {
        outline(Oval.circle(x, y, radius));
    }

    void dot(double x, double y, double radius) {
        turned(() -> pen.fill(Oval.circle(x, y, radius), INK));
    }

    void plus(double x, double y) {
        thinLine(x - 5, y, x + 5, y);
        thinLine(x, y - 5, x, y + 5);
    }

    /** Upright letters, their middle at a point that turns with the part. */
    void letters(String text, double x, double y, double width, TextStyle style) {
        Point middle = new Point(x, y).turned(box.quarters()).moved(box.x(), box.y());
        pen.textFit(
                text,
                middle.x(),
                middle.y() + 0.36 * style.size() * pen.textScale(),
                width,
                style,
                Tone.INK,
                Align.MIDDLE);
    }

    private void outline(Shape shape) {
        turned(() -> pen.shape(shape, Tone.PAPER, INK, SchematicPainter.LINE));
    }

    private void draw(Shape shape, double width) {
        turned(() -> pen.drawBlunt(shape, pen.colour(INK), width));
    }

    private void turned(Runnable drawing) {
        pen.within(box.x(), box.y(), box.quarters(), drawing);
    }
}
