package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
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
        SplittableRandom chance = new SplittableRandom(seed * 31 + question.id().hashCode());
        for (int i = order.size() - 1; i > 0; i--) {
            Collections.swap(order, i, chance.nextInt(i + 1));
        }
        return order;
    }
}
