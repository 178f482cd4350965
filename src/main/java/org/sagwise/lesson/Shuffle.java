package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * In which order the answers of questions stand in one run of a lesson. The same seed gives the
 * same order again.
 *
 * @param seed where chance begins; 0 leaves every order as it is written
 */
public record Shuffle(long seed) {

    /** As written, and as on the printed sheets. */
    public static final Shuffle NONE = new Shuffle(0);

    /** The places of the answers as written, in the order in which they are shown. */
    public List<Integer> order(Step.Choose question) {
        List<Integer> order = new ArrayList<>(
                IntStream.range(0, question.choices().size()).boxed().toList());
        if (seed == 0 || question.order() == Step.Order.KEPT) {
            return order;
        }
        Chance chance = new Chance(seed * 31 + question.id().hashCode());
        for (int i = order.size() - 1; i > 0; i--) {
            Collections.swap(order, i, chance.below(i + 1));
        }
        return order;
    }

    /** {@link java.util.SplittableRandom}, which a browser's Java has not: SplitMix64 (Steele, Lea, Flood 2014). */
    static final class Chance {

        private long seed;

        Chance(long seed) {
            this.seed = seed;
        }

        private int next() {
            seed += 0x9e3779b97f4a7c15L;
            long z = (seed ^ (seed >>> 33)) * 0x62a9d9ed799705f5L;
            return (int) (((z ^ (z >>> 28)) * 0xcb24d0a5c88c35b3L) >>> 32);
        }

        /** A whole number from 0 to below the bound. */
        int below(int bound) {
            int most = bound - 1;
            int bits = next();
            if ((bound & most) == 0) {
                return bits & most;
            }
            int half = bits >>> 1;
            while (half + most - half % bound < 0) {
                half = next() >>> 1;
            }
            return half % bound;
        }
    }
}
