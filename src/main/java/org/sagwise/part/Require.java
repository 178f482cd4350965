package org.sagwise.part;

/** Checks of arguments that only a programming error can break. */
final class Require {

    private Require() {}

    /** Returns {@code value} when it is finite and above zero. */
    static double positive(double value, String name) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be above 0 but is " + value);
        }
        return value;
    }

    /** Returns {@code value} when it is finite and not below zero. */
    static double notNegative(double value, String name) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be 0 or more but is " + value);
        }
        return value;
    }

    /** Returns {@code value} when it is neither NaN nor infinite. */
    static double finite(double value, String name) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a number but is " + value);
        }
        return value;
    }

    /** Returns {@code value} when it is above zero and at most one. */
    static double share(double value, String name) {
        if (!(value > 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " must be above 0 and at most 1 but is " + value);
        }
        return value;
    }
}
