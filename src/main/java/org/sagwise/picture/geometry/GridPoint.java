package org.sagwise.picture.geometry;

/** A point in whole units, as layouts count them. */
public record GridPoint(int x, int y) {

    public Point point() {
        return new Point(x, y);
    }

    public GridPoint moved(int dx, int dy) {
        return new GridPoint(x + dx, y + dy);
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
