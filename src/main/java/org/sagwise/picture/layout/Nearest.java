package org.sagwise.picture.layout;

import java.awt.Point;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.OptionalInt;

/** Finds what lies nearest to a point. */
final class Nearest {

    private Nearest() {}

    static OptionalInt link(List<LinkRoute> routes, double x, double y, double distance) {
        OptionalInt nearest = OptionalInt.empty();
        double least = distance;
        for (LinkRoute route : routes) {
            double apart = distance(route.points(), x, y);
            if (apart <= least) {
                least = apart;
                nearest = OptionalInt.of(route.link());
            }
        }
        return nearest;
    }

    private static double distance(List<Point> points, double x, double y) {
        double least = Double.MAX_VALUE;
        for (int i = 1; i < points.size(); i++) {
            least = Math.min(least, new Line2D.Double(points.get(i - 1), points.get(i)).ptSegDist(x, y));
        }
        return least;
    }
}
