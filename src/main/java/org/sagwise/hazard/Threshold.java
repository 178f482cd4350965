package org.sagwise.hazard;

import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * A number held against a limit.
 *
 * @param <T> what both are read from: a cell, a part or a wire
 * @param unit symbol of the unit of both
 * @param reading the number
 * @param side on which side of the limit it is too much or too little
 * @param limit from where on it counts
 * @param told the limit that a reader is told, if it is another one
 * @param also what else must be so
 */
record Threshold<T>(
        String unit,
        ToDoubleFunction<T> reading,
        Side side,
        ToDoubleFunction<T> limit,
        ToDoubleFunction<T> told,
        Predicate<T> also) {

    /** Sides of a limit; the limit itself is still good. */
    enum Side {
        ABOVE,
        BELOW
    }

    static <T> Threshold<T> above(String unit, ToDoubleFunction<T> reading, ToDoubleFunction<T> limit) {
        return new Threshold<>(unit, reading, Side.ABOVE, limit, limit, one -> true);
    }

    static <T> Threshold<T> below(String unit, ToDoubleFunction<T> reading, ToDoubleFunction<T> limit) {
        return new Threshold<>(unit, reading, Side.BELOW, limit, limit, one -> true);
    }

    /** The same, with this limit told instead. */
    Threshold<T> telling(ToDoubleFunction<T> other) {
        return new Threshold<>(unit, reading, side, limit, other, also);
    }

    /** The same, if this is so too. */
    Threshold<T> where(Predicate<T> condition) {
        return new Threshold<>(unit, reading, side, limit, told, condition);
    }

    boolean isPassed(T one) {
        return isBeyond(one) && also.test(one);
    }

    /** Whether the number is beyond the limit, whatever else is so. */
    boolean isBeyond(T one) {
        double number = reading.applyAsDouble(one);
        double edge = limit.applyAsDouble(one);
        return side == Side.ABOVE ? number > edge : number < edge;
    }

    /** How bad it is, to find the worst: multiples of a limit that is passed, or how little is left. */
    double size(T one) {
        double number = reading.applyAsDouble(one);
        return side == Side.ABOVE ? number / limit.applyAsDouble(one) : -number;
    }

    /** Puts the number and the limit that is told into a caution. */
    CautionBuilder measured(CautionBuilder caution, T one) {
        return caution.measured(reading.applyAsDouble(one), told.applyAsDouble(one), unit);
    }
}
