package org.sagwise.lesson;

/**
 * The range in which a reading must lie.
 *
 * @param least smallest value; negative infinity where there is none
 * @param most largest value; infinity where there is none
 */
public record Bounds(double least, double most) {

    /** A few parts in a million: what the solver may leave of a value that is met exactly. */
    private static final double ROUNDING = 1e-6;

    public Bounds {
        if (!(least <= most)) {
            throw new IllegalArgumentException("no range from " + least + " to " + most);
        }
    }

    /** Around a value, {@code tolerance} to both sides. */
    public static Bounds around(double value, double tolerance) {
        return new Bounds(value - tolerance, value + tolerance);
    }

    public boolean hold(double value) {
        double slack = ROUNDING * Math.max(1, Math.abs(value));
        return value >= least - slack && value <= most + slack;
    }
}
