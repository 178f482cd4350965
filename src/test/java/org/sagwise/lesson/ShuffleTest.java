package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class ShuffleTest {

    private static final Step.Choose QUESTION =
            (Step.Choose) LessonFixture.builtIn("06-same-watts").steps().get(0);

    private static final Step.Choose KEPT =
            new Step.Choose(QUESTION.head(), QUESTION.role(), QUESTION.choices(), Step.Order.KEPT);

    @Property
    void order_ofAnySeed_hasEveryAnswerOnceAndStaysTheSame(@ForAll long seed) {
        List<Integer> order = new Shuffle(seed).order(QUESTION);

        assertEquals(Set.of(0, 1, 2, 3), Set.copyOf(order));
        assertEquals(4, order.size());
        assertEquals(order, new Shuffle(seed).order(QUESTION));
    }

    @Property
    void order_thatIsToBeKept_isAsWritten(@ForAll long seed) {
        assertEquals(List.of(0, 1, 2, 3), new Shuffle(seed).order(KEPT));
    }

    @Test
    void order_withoutShuffling_isAsWritten() {
        assertEquals(List.of(0, 1, 2, 3), Shuffle.NONE.order(QUESTION));
    }

    /** Each of the four places is taken by the right answer about as often as any other. */
    @Test
    void order_ofManySeeds_putsTheRightAnswerEverywhere() {
        int[] places = new int[4];
        Set<List<Integer>> orders = new HashSet<>();
        IntStream.rangeClosed(1, 2400)
                .mapToObj(seed -> new Shuffle(seed).order(QUESTION))
                .forEach(order -> {
                    orders.add(order);
                    places[order.indexOf(QUESTION.right())]++;
                });

        assertEquals(24, orders.size());
        for (int count : places) {
            assertTrue(count > 450 && count < 750, count + " of 2400");
        }
    }

    /** The order of a run that was left must be the same in a browser and after an update. */
    @Test
    void below_anyBound_isWhatTheJdkGives() {
        for (long seed : new long[] {1, -7, 4711, Long.MAX_VALUE}) {
            SplittableRandom jdk = new SplittableRandom(seed);
            Shuffle.Chance ours = new Shuffle.Chance(seed);
            for (int bound = 2; bound < 40; bound++) {
                assertEquals(jdk.nextInt(bound), ours.below(bound));
            }
        }
    }
}
