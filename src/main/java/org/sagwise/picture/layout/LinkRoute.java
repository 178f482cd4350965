package org.sagwise.picture.layout;

import java.util.List;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Line;

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
        return at(0.5);
    }

    /** The point so far along, 0 at its start and 1 at its end. */
    public GridPoint at(double along) {
        double left = GridPoint.along(points) * along;
        for (int i = 1; i < points.size(); i++) {
            GridPoint one = points.get(i - 1);
            GridPoint other = points.get(i);
            double stretch = one.distance(other);
            if (stretch > 0 && left <= stretch) {
                double share = left / stretch;
                return new GridPoint(
                        GridPoint.whole(one.x() + share * (other.x() - one.x())),
                        GridPoint.whole(one.y() + share * (other.y() - one.y())));
            }
            left -= stretch;
        }
        return points.get(0);
    }

    /** Whether it runs from left to right, or back, at one of its points. */
    public boolean isLevelAt(GridPoint point) {
        for (int i = 1; i < points.size(); i++) {
            GridPoint one = points.get(i - 1);
            GridPoint other = points.get(i);
            if (Line.between(one.point(), other.point()).distance(point.x(), point.y()) < 1) {
                return one.y() == other.y();
            }
        }
        return true;
    }
}
