package org.sagwise.picture.geometry;

/** Enlarging evenly, turning by quarters clockwise, moving: in this order. */
public record Transform(double scale, int quarters, double dx, double dy) {

    public Transform {
        quarters = Math.floorMod(quarters, 4);
    }

    public static Transform moving(double dx, double dy) {
        return new Transform(1, 0, dx, dy);
    }

    public static Transform scaling(double scale) {
        return new Transform(scale, 0, 0, 0);
    }

    public Point of(double x, double y) {
        return new Point(scale * x, scale * y).turned(quarters).moved(dx, dy);
    }

    /** What comes out when this is applied to what an inner one gave. */
    public Transform of(Transform inner) {
        Point moved = of(inner.dx, inner.dy);
        return new Transform(scale * inner.scale, quarters + inner.quarters, moved.x(), moved.y());
    }
}
