package org.sagwise.report.pen;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.geometry.Shape;
import org.sagwise.picture.geometry.Transform;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Face;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.pen.Stroke;

/** Draws on a surface of Java 2D: an image, or a page of PDF. */
public final class Java2dPen implements Pen {

    private static final float MITRE_LIMIT = 10;

    private final Graphics2D surface;

    public Java2dPen(Graphics2D surface) {
        this.surface = surface;
        surface.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        surface.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        surface.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        surface.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    @Override
    public void fill(Shape shape, Colour colour) {
        surface.setColor(awt(colour));
        surface.fill(awt(shape));
    }

    @Override
    public void stroke(Shape shape, Stroke stroke, Colour colour) {
        surface.setColor(awt(colour));
        surface.setStroke(awt(stroke));
        surface.draw(awt(shape));
    }

    @Override
    public void text(String text, double x, double y, Align align, Face face, Colour colour) {
        surface.setColor(awt(colour));
        surface.setFont(Fonts.of(face));
        float left = (float) face.left(text, x, align);
        surface.drawString(text, left, (float) y);
    }

    @Override
    public void within(Transform frame, Runnable drawing) {
        AffineTransform before = surface.getTransform();
        surface.translate(frame.dx(), frame.dy());
        surface.transform(AffineTransform.getQuadrantRotateInstance(frame.quarters()));
        surface.scale(frame.scale(), frame.scale());
        drawing.run();
        surface.setTransform(before);
    }

    @Override
    public void clipped(Box area, Runnable drawing) {
        java.awt.Shape before = surface.getClip();
        surface.clip(awt(area));
        drawing.run();
        surface.setClip(before);
    }

    private static Color awt(Colour colour) {
        return new Color(colour.red(), colour.green(), colour.blue(), colour.alpha());
    }

    private static BasicStroke awt(Stroke stroke) {
        int ends = stroke.ends() == Stroke.Ends.ROUND ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
        float[] dashes = new float[stroke.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = stroke.dashes().get(i).floatValue();
        }
        return new BasicStroke(
                (float) stroke.width(),
                ends,
                BasicStroke.JOIN_ROUND,
                MITRE_LIMIT,
                dashes.length == 0 ? null : dashes,
                0);
    }

    private static java.awt.Shape awt(Shape shape) {
        if (shape instanceof Box box) {
            return new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
        }
        if (shape instanceof Round round) {
            Box box = round.box();
            return new RoundRectangle2D.Double(
                    box.x(), box.y(), box.width(), box.height(), 2 * round.radius(), 2 * round.radius());
        }
        if (shape instanceof Oval oval) {
            return new Ellipse2D.Double(
                    oval.x() - oval.radiusX(), oval.y() - oval.radiusY(), 2 * oval.radiusX(), 2 * oval.radiusY());
        }
        if (shape instanceof Line line) {
            return new Line2D.Double(line.x1(), line.y1(), line.x2(), line.y2());
        }
        AwtPath path = new AwtPath();
        ((Path) shape).walk(path);
        return path.drawn;
    }

    /** A path of ours, walked along by one of Java's. */
    private static final class AwtPath implements Path.Walker {

        private final Path2D drawn = new Path2D.Double();

        @Override
        public void moveTo(double x, double y) {
            drawn.moveTo(x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            drawn.lineTo(x, y);
        }

        @Override
        public void quadTo(double controlX, double controlY, double x, double y) {
            drawn.quadTo(controlX, controlY, x, y);
        }

        @Override
        public void curveTo(
                double control1X, double control1Y, double control2X, double control2Y, double x, double y) {
            drawn.curveTo(control1X, control1Y, control2X, control2Y, x, y);
        }

        @Override
        public void close() {
            drawn.closePath();
        }
    }
}
