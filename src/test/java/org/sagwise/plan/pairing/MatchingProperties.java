package org.sagwise.plan.pairing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Pairs are the best there are, and sets nearly so: held against every way to part a drawer. */
class MatchingProperties {

    /** Invented cells: capacity spread 3 %, resistance 10 %, as cells of one model scatter. */
    private static PartitionCost cells(int count, int size, Random chance) {
        double[] capacity = IntStream.range(0, count)
                .mapToDouble(i -> 2.5 * (1 + 0.03 * chance.nextGaussian()))
                .toArray();
        double[] resistance = IntStream.range(0, count)
                .mapToDouble(i -> 0.021 * (1 + 0.1 * chance.nextGaussian()))
                .toArray();
        return new PartitionCost(capacity, resistance, new PairingWish(size, 1, 0.5, false));
    }

    /** The least cost of all partitions: the first free cell goes with every choice of others, or is left over. */
    private static double least(PartitionCost cost) {
        double[] best = new double[1 << cost.cells()];
        Arrays.fill(best, Double.POSITIVE_INFINITY);
        int over = cost.cells() % cost.size();
        best[0] = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int taken = 0; taken < best.length; taken++) {
            if (Double.isInfinite(best[taken])) {
                continue;
            }
            if (Integer.bitCount(taken) == cost.cells() - over) {
                least = Math.min(least, best[taken]);
                continue;
            }
            for (int set = 0; set < best.length; set++) {
                if (Integer.bitCount(set) == cost.size() && (set & taken) == 0) {
                    int[] some = bits(set);
                    best[taken | set] = Math.min(best[taken | set], best[taken] + cost.of(some, 0));
                }
            }
        }
        return least;
    }

    private static int[] bits(int set) {
        return IntStream.range(0, 32).filter(bit -> (set >> bit & 1) == 1).toArray();
    }

    private static void assertPartition(int[] order, int cells) {
        assertEquals(cells, Arrays.stream(order).distinct().count());
        assertEquals(cells, order.length);
    }

    @Property(tries = 30)
    void pairs_areTheBestOfAll(
            @ForAll @IntRange(min = 2, max = 9) int count, @ForAll @LongRange(min = 1, max = 99_999) long seed) {
        PartitionCost cost = cells(count, 2, new Random(seed));
        int[] order = PairMatching.best(cost);
        assertPartition(order, count);
        assertEquals(least(cost), cost.of(order), 1e-12);
    }

    @Property(tries = 30)
    void sets_areNearlyTheBestOfAll(
            @ForAll @IntRange(min = 3, max = 5) int size,
            @ForAll @IntRange(min = 6, max = 11) int count,
            @ForAll @LongRange(min = 1, max = 99_999) long seed) {
        PartitionCost cost = cells(count, size, new Random(seed));
        int[] order = SetSearch.best(cost, 1);
        assertPartition(order, count);
        double least = least(cost);
        assertTrue(cost.of(order) <= least * 1.01, () -> cost.of(order) + " > " + least);
    }
}
