package org.sagwise.picture.scene;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * The window through which a bench is seen.
 *
 * @param width of the window, pixels
 * @param height of the window, pixels
 * @param scale pixels for a bench unit
 * @param left bench coordinate at the left edge
 * @param top bench coordinate at the top edge
 */
public record BenchView(double width, double height, double scale, double left, double top) {

    /** Beyond this a small bench is not enlarged to fit. */
    public static final double LARGEST_FIT = 2.0;

    /** Shows an area of the bench as large as it fits, in the middle. */
    public static BenchView fit(Rectangle2D area, double width, double height) {
        double scale = Math.min(LARGEST_FIT, Math.min(width / area.getWidth(), height / area.getHeight()));
        return around(area.getCenterX(), area.getCenterY(), width, height, scale);
    }

    private static BenchView around(double x, double y, double width, double height, double scale) {
        return new BenchView(width, height, scale, x - width / scale / 2, y - height / scale / 2);
    }

    /** This view with the bench moved by pixels. */
    public BenchView panned(double dx, double dy) {
        return new BenchView(width, height, scale, left - dx / scale, top - dy / scale);
    }

    /** This view enlarged by a factor, with the point under a pixel held in its place. */
    public BenchView zoomed(double factor, double x, double y) {
        double larger = Math.max(0.1, Math.min(8, scale * factor));
        Point2D held = toBench(x, y);
        return new BenchView(width, height, larger, held.getX() - x / larger, held.getY() - y / larger);
    }

    /** This view in a window of another size, with the middle held in its place. */
    public BenchView resized(double newWidth, double newHeight) {
        return around(left + width / scale / 2, top + height / scale / 2, newWidth, newHeight, scale);
    }

    public Point2D toBench(double x, double y) {
        return new Point2D.Double(left + x / scale, top + y / scale);
    }

    public Point2D toWindow(double x, double y) {
        return new Point2D.Double((x - left) * scale, (y - top) * scale);
    }

    public Rectangle2D toWindow(Rectangle2D area) {
        Point2D corner = toWindow(area.getX(), area.getY());
        return new Rectangle2D.Double(corner.getX(), corner.getY(), area.getWidth() * scale, area.getHeight() * scale);
    }

    /** The part of the bench that is seen. */
    public Rectangle2D seen() {
        return new Rectangle2D.Double(left, top, width / scale, height / scale);
    }

    /** From bench units to pixels. */
    public AffineTransform transform() {
        return new AffineTransform(scale, 0, 0, scale, -left * scale, -top * scale);
    }
}
