package org.sagwise.hazard;

import java.util.Comparator;
import java.util.function.ToDoubleFunction;

/**
 * The order in which a rule names what it found. What differs by less than anybody would print counts as equal and stays
 * in its order: on a live page the last bits of sums are others, and the same bench must be told in the same words there.
 */
final class Worst {

    /** Sizes come in amps, watts and volts; below this all of them are nothing. */
    private static final double NOTHING = 1e-9;

    private static final double STEPS = 1e4;

    private Worst() {}

    /** The largest first; what cannot be told comes before it. */
    static <T> Comparator<T> first(ToDoubleFunction<T> size) {
        return least(size).reversed();
    }

    /** The smallest first; what cannot be told comes last. */
    static <T> Comparator<T> least(ToDoubleFunction<T> size) {
        return Comparator.comparingDouble(it -> rank(size.applyAsDouble(it)));
    }

    /** Grows with a size, by one for every ten thousandth of it. */
    static double rank(double size) {
        return Math.copySign(Math.floor(STEPS * Math.log1p(Math.abs(size) / NOTHING)), size);
    }
}
