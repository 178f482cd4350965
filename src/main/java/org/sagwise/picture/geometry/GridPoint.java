package org.sagwise.picture.geometry;

import java.util.List;

/** A point in whole units, as layouts count them. */
public record GridPoint(int x, int y) {

    public Point point() {
        return new Point(x, y);
    }

    public GridPoint moved(int dx, int dy) {
        return new GridPoint(x + dx, y + dy);
    }

    /** Length of a way from point to point. */
    public static double along(List<GridPoint> way) {
        double length = 0;
        for (int i = 1; i < way.size(); i++) {
            length += way.get(i - 1).distance(way.get(i));
        }
        return length;
    }

    public double distance(GridPoint other) {
        return point().distance(other.point());
    }

    /** The box of no size at this point. */
    public GridBox box() {
        return new GridBox(x, y, 0, 0);
    }

    /** The nearest whole number; a half goes up, also in a browser, where the usual rounding takes −1.5 to −2. */
    public static int whole(double value) {
        return (int) Math.floor(value + 0.5);
    }
}
