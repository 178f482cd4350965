package org.sagwise.picture.geometry;

/** A point; x grows to the right, y downward. */
public record Point(double x, double y) {

    public double distance(Point other) {
        double dx = other.x - x;
        double dy = other.y - y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** This point turned clockwise by quarters about the origin. */
    public Point turned(int quarters) {
        return switch (Math.floorMod(quarters, 4)) {
            case 1 -> new Point(-y, x);
            case 2 -> new Point(-x, -y);
            case 3 -> new Point(y, -x);
            default -> this;
        };
    }

    public Point moved(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** The point on the way to another: 0 is here, 1 is there. */
    public Point toward(Point other, double share) {
        return new Point(x + share * (other.x - x), y + share * (other.y - y));
    }
}
