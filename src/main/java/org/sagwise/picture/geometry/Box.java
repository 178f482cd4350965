package org.sagwise.picture.geometry;

/**
 * An upright rectangle.
 *
 * @param x its left edge
 * @param y its upper edge
 */
public record Box(double x, double y, double width, double height) implements Shape {

    /** A box between two corners. */
    public static Box between(double x1, double y1, double x2, double y2) {
        return new Box(x1, y1, x2 - x1, y2 - y1);
    }

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    public double middleX() {
        return x + width / 2;
    }

    public double middleY() {
        return y + height / 2;
    }

    public Point middle() {
        return new Point(middleX(), middleY());
    }

    /** Its area; 0 where a side is negative. */
    public double area() {
        return Math.max(0, width) * Math.max(0, height);
    }

    private boolean isEmpty() {
        return !(width > 0 && height > 0);
    }

    /** Whether a point lies in it; of its edges the left and the upper one count. */
    public boolean contains(double pointX, double pointY) {
        return pointX >= x && pointY >= y && pointX < right() && pointY < bottom();
    }

    public boolean contains(Box other) {
        return !isEmpty()
                && !other.isEmpty()
                && other.x >= x
                && other.y >= y
                && other.right() <= right()
                && other.bottom() <= bottom();
    }

    /** Whether both have some area in common. */
    public boolean intersects(Box other) {
        return !common(other).isEmpty();
    }

    /** What both have in common; its sides are negative where they have nothing. */
    public Box common(Box other) {
        return between(
                Math.max(x, other.x),
                Math.max(y, other.y),
                Math.min(right(), other.right()),
                Math.min(bottom(), other.bottom()));
    }

    /** The smallest box that holds both. */
    public Box union(Box other) {
        return between(
                Math.min(x, other.x),
                Math.min(y, other.y),
                Math.max(right(), other.right()),
                Math.max(bottom(), other.bottom()));
    }

    /** This box with every edge moved outward. */
    public Box grown(double by) {
        return grown(by, by);
    }

    /** This box with its upright edges moved outward by one distance, its level ones by another. */
    public Box grown(double byX, double byY) {
        return new Box(x - byX, y - byY, width + 2 * byX, height + 2 * byY);
    }

    public Box moved(double dx, double dy) {
        return new Box(x + dx, y + dy, width, height);
    }

    @Override
    public boolean isDrawable() {
        return Double.isFinite(x + y + width + height) && width >= 0 && height >= 0;
    }
}
