package org.sagwise.plan;

/**
 * A value that was worked out from readings.
 *
 * @param value in its unit
 * @param standard standard uncertainty, in the same unit
 */
public record Estimate(double value, double standard) {

    /** For about 95 of 100 cases, as usual: JCGM 100:2008 (GUM), 6.2 and 6.3. */
    public static final double COVERAGE = 2;

    /** Half the width of the interval that holds the value in about 95 of 100 cases. */
    public double expanded() {
        return COVERAGE * standard;
    }

    /** Whether readings tell the value from zero at all. */
    public boolean isResolved() {
        return Math.abs(value) > expanded();
    }
}
