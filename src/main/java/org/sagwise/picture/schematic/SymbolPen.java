package org.sagwise.picture.schematic;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.Align;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;

/** Draws about the middle of a part, turned with it; letters stay upright. */
final class SymbolPen {

    private static final Tone INK = Tone.CONDUCTOR_EDGE;
    private static final double BAR = 7;

    private final Pen pen;
    private final PartBox box;

    SymbolPen(Pen pen, PartBox box) {
        this.pen = pen;
        this.box = box;
    }

    void line(double x1, double y1, double x2, double y2) {
        draw(new Line2D.Double(x1, y1, x2, y2), SchematicPainter.LINE);
    }

    void thinLine(double x1, double y1, double x2, double y2) {
        draw(new Line2D.Double(x1, y1, x2, y2), 1.6);
    }

    /** A thick line with blunt ends. */
    void bar(double x1, double y1, double x2, double y2) {
        turned(() -> pen.drawBlunt(new Line2D.Double(x1, y1, x2, y2), pen.colour(INK), BAR));
    }

    void dashed(double x1, double y1, double x2, double y2) {
        turned(() -> pen.drawDashed(new Line2D.Double(x1, y1, x2, y2), INK, 1.8, 5, 4));
    }

    /** A rectangle about the middle. */
    void box(double halfWidth, double halfHeight) {
        outline(new Rectangle2D.Double(-halfWidth, -halfHeight, 2 * halfWidth, 2 * halfHeight));
    }

    /** A filled circle with an outline. */
    void circle(double x, double y, double radius) {
        outline(disc(x, y, radius));
    }

    void dot(double x, double y, double radius) {
        turned(() -> pen.fill(disc(x, y, radius), INK));
    }

    void plus(double x, double y) {
        thinLine(x - 5, y, x + 5, y);
        thinLine(x, y - 5, x, y + 5);
    }

    /** Upright letters, their middle at a point that turns with the part. */
    void letters(String text, double x, double y, double width, TextStyle style) {
        int quarters = box.quarters();
        double turnedX = x;
        double turnedY = y;
        for (int i = 0; i < quarters; i++) {
            double before = turnedX;
            turnedX = -turnedY;
            turnedY = before;
        }
        pen.textFit(
                text,
                box.x() + turnedX,
                box.y() + turnedY + 0.36 * style.size() * pen.textScale(),
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

    private static Shape disc(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }
}
