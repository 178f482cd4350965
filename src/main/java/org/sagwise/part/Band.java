package org.sagwise.part;

/**
 * A spread of values within which something begins to happen. Used where sources disagree, so that
 * nobody takes one number for a promise.
 *
 * @param from lower end, finite
 * @param to upper end, finite and not below {@code from}
 */
public record Band(double from, double to) {

    public Band {
        Require.finite(from, "from");
        Require.finite(to, "to");
        if (to < from) {
            throw new IllegalArgumentException("a band must not end below its start");
        }
    }

    /** Whether {@code value} lies within the band, ends included. */
    public boolean contains(double value) {
        return value >= from && value <= to;
    }
}
