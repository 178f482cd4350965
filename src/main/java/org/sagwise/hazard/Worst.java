package org.sagwise.hazard;

import java.util.Comparator;
import java.util.function.ToDoubleFunction;

/**
 * The order in which a rule names what it found. What differs in the last bits of its sums alone counts as equal and
 * stays in its order: on a live page these bits are others, and the same bench must be told in the same words there.
 */
final class Worst {

    private Worst() {}

    /** The largest first; what cannot be told comes before it. */
    static <T> Comparator<T> first(ToDoubleFunction<T> size) {
        return least(size).reversed();
    }

    /** The smallest first; what cannot be told comes last. */
    static <T> Comparator<T> least(ToDoubleFunction<T> size) {
        return Comparator.comparingDouble(it -> (float) size.applyAsDouble(it));
    }
}
