package org.sagwise.picture.layout;

import java.util.List;
import java.util.OptionalInt;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Line;

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

    private static double distance(List<GridPoint> points, double x, double y) {
        double least = Double.MAX_VALUE;
        for (int i = 1; i < points.size(); i++) {
            least = Math.min(
                    least,
                    Line.between(points.get(i - 1).point(), points.get(i).point())
                            .distance(x, y));
        }
        return least;
    }
}
