package org.sagwise.picture.bench;

import java.awt.Point;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** Ways with rounded corners, as a shape to draw and as points at even distances. */
final class SoftPath {

    private static final int CORNER_STEPS = 6;

    private SoftPath() {}

    /** The way as a shape. */
    static Path2D shape(List<Point> way, double radius) {
        Path2D path = new Path2D.Double();
        path.moveTo(way.get(0).x, way.get(0).y);
        for (int i = 1; i < way.size() - 1; i++) {
            Point2D before = toward(way.get(i), way.get(i - 1), radius);
            Point2D after = toward(way.get(i), way.get(i + 1), radius);
            path.lineTo(before.getX(), before.getY());
            path.quadTo(way.get(i).x, way.get(i).y, after.getX(), after.getY());
        }
        Point last = way.get(way.size() - 1);
        path.lineTo(last.x, last.y);
        return path;
    }

    /** The way as short straight pieces. */
    static List<Point2D> points(List<Point> way, double radius) {
        List<Point2D> points = new ArrayList<>(List.of(way.get(0)));
        for (int i = 1; i < way.size() - 1; i++) {
            Point2D before = toward(way.get(i), way.get(i - 1), radius);
            Point2D after = toward(way.get(i), way.get(i + 1), radius);
            for (int step = 0; step <= CORNER_STEPS; step++) {
                points.add(bent(before, way.get(i), after, (double) step / CORNER_STEPS));
            }
        }
        points.add(way.get(way.size() - 1));
        return points;
    }

    /** A point of the quadratic curve by which a corner is rounded. */
    private static Point2D bent(Point2D from, Point2D corner, Point2D to, double t) {
        double a = (1 - t) * (1 - t);
        double b = 2 * t * (1 - t);
        double c = t * t;
        return new Point2D.Double(
                a * from.getX() + b * corner.getX() + c * to.getX(),
                a * from.getY() + b * corner.getY() + c * to.getY());
    }

    /** The point at a distance from a corner toward its neighbour, at most half way. */
    private static Point2D toward(Point corner, Point neighbour, double distance) {
        double length = corner.distance(neighbour);
        double share = Math.min(distance, length / 2) / length;
        return new Point2D.Double(
                corner.x + share * (neighbour.x - corner.x), corner.y + share * (neighbour.y - corner.y));
    }
}
