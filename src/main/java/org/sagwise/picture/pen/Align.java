package org.sagwise.picture.pen;

/** Which part of a text stands at its place. */
public enum Align {
    LEFT(0),
    MIDDLE(0.5),
    RIGHT(1);

    private final double share;

    Align(double share) {
        this.share = share;
    }

    /** Share of a text's width that stands left of its place. */
    public double share() {
        return share;
    }
}
