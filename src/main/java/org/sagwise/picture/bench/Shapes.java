package org.sagwise.picture.bench;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Short ways to say common shapes. */
final class Shapes {

    private Shapes() {}

    /** A rectangle with rounded corners between two corners. */
    static Shape round(double x1, double y1, double x2, double y2, double radius) {
        return new RoundRectangle2D.Double(x1, y1, x2 - x1, y2 - y1, 2 * radius, 2 * radius);
    }

    /** A rectangle between two corners. */
    static Rectangle2D box(double x1, double y1, double x2, double y2) {
        return new Rectangle2D.Double(x1, y1, x2 - x1, y2 - y1);
    }

    static Shape disc(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    /** A closed outline through points given as x, y, x, y … */
    static Path2D polygon(double... coordinates) {
        Path2D path = line(coordinates);
        path.closePath();
        return path;
    }

    /** A line through points given as x, y, x, y … */
    static Path2D line(double... coordinates) {
        Path2D path = new Path2D.Double();
        path.moveTo(coordinates[0], coordinates[1]);
        for (int i = 2; i + 1 < coordinates.length; i += 2) {
            path.lineTo(coordinates[i], coordinates[i + 1]);
        }
        return path;
    }
}
