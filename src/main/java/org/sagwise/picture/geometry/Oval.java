package org.sagwise.picture.geometry;

/** An ellipse about a point. */
public record Oval(double x, double y, double radiusX, double radiusY) implements Shape {

    public static Oval circle(double x, double y, double radius) {
        return new Oval(x, y, radius, radius);
    }

    @Override
    public boolean isDrawable() {
        return Double.isFinite(x + y) && radiusX >= 0 && radiusY >= 0;
    }
}
