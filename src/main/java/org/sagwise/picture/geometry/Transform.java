package org.sagwise.picture.geometry;

/** Enlarging evenly, turning by quarters clockwise, moving: in this order. */
public record Transform(double scale, int quarters, double dx, double dy) {

    public Transform {
        quarters = Math.floorMod(quarters, 4);
    }
}
