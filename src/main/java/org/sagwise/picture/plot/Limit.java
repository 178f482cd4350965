package org.sagwise.picture.plot;

/**
 * A line across a chart at a value that matters.
 *
 * @param label what it says, for people
 * @param at the value
 * @param way which axis the value is of
 */
public record Limit(String label, double at, Way way) {

    /** How it lies. */
    public enum Way {
        /** At a value of the upright axis. */
        LEVEL,
        /** At a value of the level axis. */
        UPRIGHT
    }
}
