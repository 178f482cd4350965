package org.sagwise.run.playback;

/** How many seconds on the bench pass in one real second. */
public enum Speed {
    ONE(1),
    TEN(10),
    SIXTY(60),
    SIX_HUNDRED(600);

    private final int factor;

    Speed(int factor) {
        this.factor = factor;
    }

    public int factor() {
        return factor;
    }

    /** The next faster one; the fastest stays. */
    public Speed faster() {
        return values()[Math.min(ordinal() + 1, values().length - 1)];
    }

    /** The next slower one; the slowest stays. */
    public Speed slower() {
        return values()[Math.max(ordinal() - 1, 0)];
    }
}
