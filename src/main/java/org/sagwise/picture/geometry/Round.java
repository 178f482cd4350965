package org.sagwise.picture.geometry;

/** A box with rounded corners; a radius of half a side makes that side's end a half circle. */
public record Round(Box box, double radius) implements Shape {

    /** A box with rounded corners between two corners. */
    public static Round between(double x1, double y1, double x2, double y2, double radius) {
        return new Round(Box.between(x1, y1, x2, y2), radius);
    }

    @Override
    public boolean isDrawable() {
        return box.isDrawable() && radius >= 0;
    }
}
