package org.sagwise.picture.layout;

/** The four directions on the bench, clockwise from up. */
public enum Bearing {
    UP(0, -1),
    RIGHT(1, 0),
    DOWN(0, 1),
    LEFT(-1, 0);

    private final int dx;
    private final int dy;

    Bearing(int dx, int dy) {
        this.dx = dx;
        this.dy = dy;
    }

    public int dx() {
        return dx;
    }

    public int dy() {
        return dy;
    }

    public boolean isHorizontal() {
        return dx != 0;
    }

    /** This direction after a number of quarter turns clockwise. */
    public Bearing turned(int quarters) {
        return values()[Math.floorMod(ordinal() + quarters, 4)];
    }

    public Bearing opposite() {
        return turned(2);
    }

    /** How many quarter turns clockwise lead from this direction to another: 0 to 3. */
    public int quartersTo(Bearing other) {
        return Math.floorMod(other.ordinal() - ordinal(), 4);
    }
}
