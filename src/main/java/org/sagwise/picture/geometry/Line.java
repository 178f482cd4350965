package org.sagwise.picture.geometry;

/** A straight line from one point to another. */
public record Line(double x1, double y1, double x2, double y2) implements Shape {

    public static Line between(Point from, Point to) {
        return new Line(from.x(), from.y(), to.x(), to.y());
    }

    /** How far a point lies from the nearest point of the line. */
    public double distance(double x, double y) {
        double dx = x2 - x1;
        double dy = y2 - y1;
        double fromStart = (x - x1) * dx + (y - y1) * dy;
        double fromEnd = (x2 - x) * dx + (y2 - y) * dy;
        if (fromStart <= 0 || fromEnd <= 0) {
            return new Point(x, y).distance(fromStart <= 0 ? new Point(x1, y1) : new Point(x2, y2));
        }
        return Math.abs((x - x1) * dy - (y - y1) * dx) / Math.sqrt(dx * dx + dy * dy);
    }

    /** Whether any point of it lies in a box or on its edge (Liang and Barsky's clipping). */
    public boolean meets(Box box) {
        double[] span = {0, 1};
        return !(box.width() < 0 || box.height() < 0)
                && clip(span, x1, x2 - x1, box.x(), box.right())
                && clip(span, y1, y2 - y1, box.y(), box.bottom());
    }

    /** Narrows the span of the line that lies between two edges; whether anything is left of it. */
    private static boolean clip(double[] span, double start, double way, double low, double high) {
        if (way == 0) {
            return start >= low && start <= high;
        }
        double one = (low - start) / way;
        double other = (high - start) / way;
        span[0] = Math.max(span[0], Math.min(one, other));
        span[1] = Math.min(span[1], Math.max(one, other));
        return span[0] <= span[1];
    }

    /** The smallest box that holds it. */
    public Box bounds() {
        return Box.between(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
    }

    @Override
    public boolean isDrawable() {
        return Double.isFinite(x1 + y1 + x2 + y2);
    }
}
