package org.sagwise.plan.vary;

import org.sagwise.run.Basis;

/**
 * How far a number of a part commonly lies from what is printed on it.
 *
 * @param shape what {@code within} means
 * @param within 95 of 100 lie within this
 * @param basis on what that rests
 */
public record Tolerance(Shape shape, double within, Basis basis) {

    /** Standard deviations within which 95 of 100 lie, of a normal distribution. */
    private static final double Z_95 = 1.959964;

    /** Nothing lies further out: parts that are so far off are sorted out. */
    private static final double MOST_Z = 3;

    /** How numbers lie around what is printed. */
    public enum Shape {
        /** Normally distributed; within is a share of the number. */
        SHARE,
        /** Normally distributed; within is in the unit of the number. */
        DISTANCE,
        /** Its logarithm is normally distributed; within is a factor either way. */
        FACTOR
    }

    /**
     * The number of one part.
     *
     * @param printed what is printed on it
     * @param z how far off it is, in standard deviations
     */
    public double apply(double printed, double z) {
        double deviations = Math.max(-MOST_Z, Math.min(MOST_Z, z)) / Z_95;
        return switch (shape) {
            case SHARE -> printed * (1 + within * deviations);
            case DISTANCE -> printed + within * deviations;
            case FACTOR -> printed * Math.exp(Math.log(within) * deviations);
        };
    }
}
