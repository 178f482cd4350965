package org.sagwise.picture.layout;

import java.util.List;
import org.sagwise.picture.geometry.GridPoint;

/**
 * The way of a link from its first terminal to its second.
 *
 * @param link its place in the scenario
 * @param points corners, terminals included
 */
public record LinkRoute(int link, List<GridPoint> points) {

    public LinkRoute {
        points = List.copyOf(points);
    }

    /** The point half way along. */
    public GridPoint middle() {
        double half = length(points) / 2;
        for (int i = 1; i < points.size(); i++) {
            GridPoint one = points.get(i - 1);
            GridPoint other = points.get(i);
            double stretch = one.distance(other);
            if (stretch > 0 && half <= stretch) {
                double share = half / stretch;
                return new GridPoint((int) Math.round(one.x() + share * (other.x() - one.x())), (int)
                        Math.round(one.y() + share * (other.y() - one.y())));
            }
            half -= stretch;
        }
        return points.get(0);
    }

    private static double length(List<GridPoint> points) {
        double length = 0;
        for (int i = 1; i < points.size(); i++) {
            length += points.get(i - 1).distance(points.get(i));
        }
        return length;
    }
}
