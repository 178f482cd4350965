package org.sagwise.picture.scene;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.geometry.Transform;

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
    public static BenchView fit(Box area, double width, double height) {
        double scale = Math.min(LARGEST_FIT, Math.min(width / area.width(), height / area.height()));
        return around(area.middleX(), area.middleY(), width, height, scale);
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
        Point held = toBench(x, y);
        return new BenchView(width, height, larger, held.x() - x / larger, held.y() - y / larger);
    }

    /** This view in a window of another size, with the middle held in its place. */
    public BenchView resized(double newWidth, double newHeight) {
        return around(left + width / scale / 2, top + height / scale / 2, newWidth, newHeight, scale);
    }

    public Point toBench(double x, double y) {
        return new Point(left + x / scale, top + y / scale);
    }

    public Point toWindow(double x, double y) {
        return new Point((x - left) * scale, (y - top) * scale);
    }

    public Box toWindow(Box area) {
        Point corner = toWindow(area.x(), area.y());
        return new Box(corner.x(), corner.y(), area.width() * scale, area.height() * scale);
    }

    /** The part of the bench that is seen. */
    public Box seen() {
        return new Box(left, top, width / scale, height / scale);
    }

    /** From bench units to pixels. */
    public Transform transform() {
        return new Transform(scale, 0, -left * scale, -top * scale);
    }
}
