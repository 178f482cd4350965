package org.sagwise.picture.geometry;

/** A box in whole units, as layouts count them. */
public record GridBox(int x, int y, int width, int height) {

    public Box box() {
        return new Box(x, y, width, height);
    }

    public int right() {
        return x + width;
    }

    public int bottom() {
        return y + height;
    }

    public double middleX() {
        return x + width / 2.0;
    }

    public double middleY() {
        return y + height / 2.0;
    }

    /** Whether a point lies in it; of its edges the left and the upper one count. */
    public boolean contains(double pointX, double pointY) {
        return box().contains(pointX, pointY);
    }

    /** Whether both have some area in common. */
    public boolean intersects(GridBox other) {
        return Math.max(x, other.x) < Math.min(right(), other.right())
                && Math.max(y, other.y) < Math.min(bottom(), other.bottom());
    }

    /** The area that both have in common; 0 where there is none. */
    public double commonArea(GridBox other) {
        int across = Math.min(right(), other.right()) - Math.max(x, other.x);
        int down = Math.min(bottom(), other.bottom()) - Math.max(y, other.y);
        return across > 0 && down > 0 ? (double) across * down : 0;
    }

    /** The smallest box that holds both, of which either may be of no size. */
    public GridBox union(GridBox other) {
        int left = Math.min(x, other.x);
        int top = Math.min(y, other.y);
        return new GridBox(
                left, top, Math.max(right(), other.right()) - left, Math.max(bottom(), other.bottom()) - top);
    }

    /** This box with every edge moved outward. */
    public GridBox grown(int by) {
        return new GridBox(x - by, y - by, width + 2 * by, height + 2 * by);
    }

    public GridBox moved(int dx, int dy) {
        return new GridBox(x + dx, y + dy, width, height);
    }
}
