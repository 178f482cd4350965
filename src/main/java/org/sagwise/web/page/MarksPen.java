package org.sagwise.web.page;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Shape;
import org.sagwise.picture.geometry.Transform;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Face;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.pen.Stroke;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSObject;
import org.teavm.jso.JSProperty;

/**
 * Strokes the drifting marks of current on a canvas: they change with every frame, for which text of
 * SVG would be too slow. It can stroke paths and nothing else, since marks are nothing else.
 */
final class MarksPen implements Pen {

    private final Surface surface;

    MarksPen(Tag canvas) {
        surface = of(canvas);
    }

    /** A canvas to draw on. */
    interface Surface extends JSObject {

        void beginPath();

        void moveTo(double x, double y);

        void lineTo(double x, double y);

        void quadraticCurveTo(double controlX, double controlY, double x, double y);

        void bezierCurveTo(double x1, double y1, double x2, double y2, double x, double y);

        void closePath();

        void stroke();

        void save();

        void restore();

        void translate(double x, double y);

        void rotate(double radians);

        void scale(double x, double y);

        void setTransform(double a, double b, double c, double d, double e, double f);

        void clearRect(double x, double y, double width, double height);

        @JSProperty
        void setStrokeStyle(String colour);

        @JSProperty
        void setLineWidth(double width);

        @JSProperty
        void setLineCap(String cap);

        @JSProperty
        void setLineJoin(String join);
    }

    @JSBody(params = "canvas", script = "return canvas.getContext('2d');")
    private static native Surface of(Tag canvas);

    /** Wipes everything and sets pixels for a unit. */
    void begin(double scale, double width, double height) {
        surface.setTransform(scale, 0, 0, scale, 0, 0);
        surface.clearRect(0, 0, width, height);
    }

    @Override
    public void stroke(Shape shape, Stroke stroke, Colour colour) {
        surface.beginPath();
        ((Path) shape).walk(new Walk(surface));
        surface.setStrokeStyle(colour.hex());
        surface.setLineWidth(stroke.width());
        surface.setLineCap(stroke.ends() == Stroke.Ends.ROUND ? "round" : "butt");
        surface.setLineJoin("round");
        surface.stroke();
    }

    @Override
    public void within(Transform frame, Runnable drawing) {
        surface.save();
        surface.translate(frame.dx(), frame.dy());
        surface.rotate(frame.quarters() * Math.PI / 2);
        surface.scale(frame.scale(), frame.scale());
        drawing.run();
        surface.restore();
    }

    @Override
    public void fill(Shape shape, Colour colour) {
        throw new UnsupportedOperationException("marks are strokes");
    }

    @Override
    public void text(String text, double x, double y, Align align, Face face, Colour colour) {
        throw new UnsupportedOperationException("marks are strokes");
    }

    @Override
    public void clipped(Box area, Runnable drawing) {
        throw new UnsupportedOperationException("marks are strokes");
    }

    /** Goes along a path. */
    private record Walk(Surface surface) implements Path.Walker {

        @Override
        public void moveTo(double x, double y) {
            surface.moveTo(x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            surface.lineTo(x, y);
        }

        @Override
        public void quadTo(double controlX, double controlY, double x, double y) {
            surface.quadraticCurveTo(controlX, controlY, x, y);
        }

        @Override
        public void curveTo(
                double control1X, double control1Y, double control2X, double control2Y, double x, double y) {
            surface.bezierCurveTo(control1X, control1Y, control2X, control2Y, x, y);
        }

        @Override
        public void close() {
            surface.closePath();
        }
    }
}
