package org.sagwise.picture.bench;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Point;

/** Ways with rounded corners, as a shape to draw and as points at even distances. */
final class SoftPath {

    private static final int CORNER_STEPS = 6;

    private SoftPath() {}

    /** The way as a shape. */
    static Path shape(List<GridPoint> way, double radius) {
        Path.Builder path = new Path.Builder();
        path.moveTo(way.get(0).x(), way.get(0).y());
        for (int i = 1; i < way.size() - 1; i++) {
            Point before = toward(way.get(i), way.get(i - 1), radius);
            Point after = toward(way.get(i), way.get(i + 1), radius);
            path.lineTo(before.x(), before.y());
            path.quadTo(way.get(i).x(), way.get(i).y(), after.x(), after.y());
        }
        GridPoint last = way.get(way.size() - 1);
        path.lineTo(last.x(), last.y());
        return path.build();
    }

    /** The way as short straight pieces. */
    static List<Point> points(List<GridPoint> way, double radius) {
        List<Point> points = new ArrayList<>(List.of(way.get(0).point()));
        for (int i = 1; i < way.size() - 1; i++) {
            Point before = toward(way.get(i), way.get(i - 1), radius);
            Point after = toward(way.get(i), way.get(i + 1), radius);
            for (int step = 0; step <= CORNER_STEPS; step++) {
                points.add(bent(before, way.get(i).point(), after, (double) step / CORNER_STEPS));
            }
        }
        points.add(way.get(way.size() - 1).point());
        return points;
    }

    /** A point of the quadratic curve by which a corner is rounded. */
    private static Point bent(Point from, Point corner, Point to, double t) {
        double a = (1 - t) * (1 - t);
        double b = 2 * t * (1 - t);
        double c = t * t;
        return new Point(a * from.x() + b * corner.x() + c * to.x(), a * from.y() + b * corner.y() + c * to.y());
    }

    /** The point at a distance from a corner toward its neighbour, at most half way. */
    private static Point toward(GridPoint corner, GridPoint neighbour, double distance) {
        double length = corner.distance(neighbour);
        return corner.point().toward(neighbour.point(), Math.min(distance, length / 2) / length);
    }
}
