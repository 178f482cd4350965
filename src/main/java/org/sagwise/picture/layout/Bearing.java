package org.sagwise.picture.layout;

/** The four directions on the bench, clockwise from up. */
public enum Bearing {
    UP(0, -1),
    RIGHT(1, 0),
    DOWN(0, 1),
    LEFT(-1, 0);

    /** {@code values()} makes a new array each time, which the search for ways would ask for at every step. */
    private static final Bearing[] CLOCKWISE = values();

    private final int dx;
    private final int dy;

    Bearing(int dx, int dy) {
        this.dx = dx;
        this.dy = dy;
    }

    /** The direction in this place of the order, 0 to 3. */
    static Bearing at(int place) {
        return CLOCKWISE[place];
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
        return CLOCKWISE[Math.floorMod(ordinal() + quarters, 4)];
    }

    public Bearing opposite() {
        return turned(2);
    }

    /** How many quarter turns clockwise lead from this direction to another: 0 to 3. */
    public int quartersTo(Bearing other) {
        return Math.floorMod(other.ordinal() - ordinal(), 4);
    }
}
