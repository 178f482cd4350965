package org.sagwise.ui.kit;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.geometry.Shape;
import org.sagwise.picture.geometry.Transform;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Face;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.pen.Stroke;

/**
 * Draws on a JavaFX canvas, and writes text as the outlines of its letters.
 *
 * <p>JavaFX fills the outlines of scaled letters by the even-odd rule, which leaves holes where the
 * strokes of one letter overlap, as they do in the bundled typeface. Filled here by the non-zero
 * rule, letters come out as they do in every exported picture.
 */
final class CanvasPen implements Pen {

    private static final double OPAQUE = 255;

    private final GraphicsContext canvas;
    private final Letters letters;
    private final Outline outline = new Outline();

    CanvasPen(GraphicsContext canvas, Letters letters) {
        this.canvas = canvas;
        this.letters = letters;
        canvas.setLineJoin(StrokeLineJoin.ROUND);
    }

    @Override
    public void fill(Shape shape, Colour colour) {
        canvas.setFill(color(colour));
        if (shape instanceof Box box) {
            canvas.fillRect(box.x(), box.y(), box.width(), box.height());
        } else if (shape instanceof Round round) {
            Box box = round.box();
            double arc = 2 * round.radius();
            canvas.fillRoundRect(box.x(), box.y(), box.width(), box.height(), arc, arc);
        } else if (shape instanceof Oval oval) {
            canvas.fillOval(
                    oval.x() - oval.radiusX(), oval.y() - oval.radiusY(), 2 * oval.radiusX(), 2 * oval.radiusY());
        } else if (shape instanceof Path path) {
            canvas.beginPath();
            path.walk(outline);
            canvas.fill();
        }
    }

    @Override
    public void stroke(Shape shape, Stroke stroke, Colour colour) {
        canvas.setStroke(color(colour));
        canvas.setLineWidth(stroke.width());
        canvas.setLineCap(stroke.ends() == Stroke.Ends.ROUND ? StrokeLineCap.ROUND : StrokeLineCap.BUTT);
        canvas.setLineDashes(
                stroke.dashes().stream().mapToDouble(Double::doubleValue).toArray());
        if (shape instanceof Box box) {
            canvas.strokeRect(box.x(), box.y(), box.width(), box.height());
        } else if (shape instanceof Round round) {
            Box box = round.box();
            double arc = 2 * round.radius();
            canvas.strokeRoundRect(box.x(), box.y(), box.width(), box.height(), arc, arc);
        } else if (shape instanceof Oval oval) {
            canvas.strokeOval(
                    oval.x() - oval.radiusX(), oval.y() - oval.radiusY(), 2 * oval.radiusX(), 2 * oval.radiusY());
        } else if (shape instanceof Line line) {
            canvas.strokeLine(line.x1(), line.y1(), line.x2(), line.y2());
        } else if (shape instanceof Path path) {
            canvas.beginPath();
            path.walk(outline);
            canvas.stroke();
        }
    }

    /** What is added to a path goes through the transform of its moment: so letters come side by side. */
    @Override
    public void text(String text, double x, double y, Align align, Face face, Colour colour) {
        canvas.setFill(color(colour));
        canvas.save();
        canvas.translate(face.left(text, x, align), y);
        canvas.scale(face.size() / Letters.SIZE, face.size() / Letters.SIZE);
        canvas.beginPath();
        text.codePoints().mapToObj(point -> letters.of(face.weight(), point)).forEach(letter -> {
            letter.outline().walk(outline);
            canvas.translate(letter.width(), 0);
        });
        canvas.fill();
        canvas.restore();
    }

    @Override
    public void within(Transform frame, Runnable drawing) {
        Point right = new Point(frame.scale(), 0).turned(frame.quarters());
        canvas.save();
        canvas.transform(right.x(), right.y(), -right.y(), right.x(), frame.dx(), frame.dy());
        drawing.run();
        canvas.restore();
    }

    @Override
    public void clipped(Box area, Runnable drawing) {
        canvas.save();
        canvas.beginPath();
        canvas.rect(area.x(), area.y(), area.width(), area.height());
        canvas.clip();
        drawing.run();
        canvas.restore();
    }

    private static Color color(Colour colour) {
        return Color.rgb(colour.red(), colour.green(), colour.blue(), colour.alpha() / OPAQUE);
    }

    /** Goes along a path on the canvas. */
    private final class Outline implements Path.Walker {

        @Override
        public void moveTo(double x, double y) {
            canvas.moveTo(x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            canvas.lineTo(x, y);
        }

        @Override
        public void quadTo(double controlX, double controlY, double x, double y) {
            canvas.quadraticCurveTo(controlX, controlY, x, y);
        }

        @Override
        public void curveTo(
                double control1X, double control1Y, double control2X, double control2Y, double x, double y) {
            canvas.bezierCurveTo(control1X, control1Y, control2X, control2Y, x, y);
        }

        @Override
        public void close() {
            canvas.closePath();
        }
    }
}
