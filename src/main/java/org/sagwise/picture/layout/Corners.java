package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.picture.geometry.GridPoint;

/** Ways reduced to their corners. */
final class Corners {

    private Corners() {}

    /** The same way without repeated points and without points on a straight stretch. */
    static List<GridPoint> of(List<GridPoint> way) {
        List<GridPoint> corners = new ArrayList<>();
        for (GridPoint point : way) {
            int count = corners.size();
            if (count > 0 && corners.get(count - 1).equals(point)) {
                continue;
            }
            if (count > 1 && isStraight(corners.get(count - 2), corners.get(count - 1), point)) {
                corners.set(count - 1, point);
            } else {
                corners.add(point);
            }
        }
        return corners;
    }

    private static boolean isStraight(GridPoint a, GridPoint b, GridPoint c) {
        boolean upright = a.x() == b.x() && b.x() == c.x() && (b.y() - a.y()) * (long) (c.y() - b.y()) > 0;
        boolean level = a.y() == b.y() && b.y() == c.y() && (b.x() - a.x()) * (long) (c.x() - b.x()) > 0;
        return upright || level;
    }
}
