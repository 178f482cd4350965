package org.sagwise.plan.pairing;

import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.sagwise.errand.Errand;

/**
 * Sets of three and more at little cost: many beginnings, each improved by swapping two cells for as
 * long as that helps. Finding the least for sure is out of reach from three a set on (it holds
 * three-dimensional matching); how near this comes is measured against all partitions in the tests.
 */
final class SetSearch {

    /** Beginnings by order: from resistance alone to capacity alone. */
    private static final int SORTED = 6;

    /** Beginnings by chance. */
    private static final int SHUFFLED = 24;

    /** Swaps looked at for one beginning, so that a large drawer takes seconds at most. */
    private static final long MOST_LOOKS = 400_000;

    private static final double EPSILON = 1e-12;

    private SetSearch() {}

    /**
     * The order in which each few cells make a set, and those that are left over come last.
     *
     * @param seed for the beginnings by chance: the same gives the same
     */
    static int[] best(PartitionCost cost, long seed) {
        int[] best = improved(sorted(cost, 1), cost);
        SplittableRandom chance = new SplittableRandom(seed);
        for (int i = 0; i < SORTED + SHUFFLED; i++) {
            int[] begin = i < SORTED ? sorted(cost, i / (double) SORTED) : shuffled(cost.cells(), chance);
            int[] found = improved(begin, cost);
            best = cost.of(found) < cost.of(best) - EPSILON ? found : best;
        }
        return best;
    }

    private static int[] sorted(PartitionCost cost, double mix) {
        return IntStream.range(0, cost.cells())
                .boxed()
                .sorted(Comparator.comparingDouble(cell -> cost.rank(cell, mix)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** An order by lot. */
    static int[] shuffled(int cells, SplittableRandom chance) {
        int[] order = IntStream.range(0, cells).toArray();
        for (int i = cells - 1; i > 0; i--) {
            swap(order, i, chance.nextInt(i + 1));
        }
        return order;
    }

    private static int[] improved(int[] begin, PartitionCost cost) {
        int[] order = begin.clone();
        int inSets = order.length / cost.size() * cost.size();
        long looks = 0;
        boolean better = true;
        while (better && looks < MOST_LOOKS) {
            better = false;
            for (int i = 0; i < inSets; i++) {
                Errand.heed();
                for (int j = (i / cost.size() + 1) * cost.size(); j < order.length; j++) {
                    looks++;
                    double before = both(order, i, j, inSets, cost);
                    swap(order, i, j);
                    if (both(order, i, j, inSets, cost) < before - EPSILON) {
                        better = true;
                    } else {
                        swap(order, i, j);
                    }
                }
            }
        }
        return order;
    }

    /** What the sets of two places cost. */
    private static double both(int[] order, int i, int j, int inSets, PartitionCost cost) {
        double first = cost.of(order, i / cost.size() * cost.size());
        return j < inSets ? first + cost.of(order, j / cost.size() * cost.size()) : first;
    }

    private static void swap(int[] order, int i, int j) {
        int kept = order[i];
        order[i] = order[j];
        order[j] = kept;
    }
}
