package org.sagwise.plan.pairing;

/** What a set of some cells costs, by their numbers in arrays: asked very often. */
final class PartitionCost {

    private final double[] capacity;
    private final double[] resistance;
    private final PairingWish wish;

    /**
     * @param capacity by cell
     * @param resistance by cell
     */
    PartitionCost(double[] capacity, double[] resistance, PairingWish wish) {
        this.capacity = capacity.clone();
        this.resistance = resistance.clone();
        this.wish = wish;
    }

    int cells() {
        return capacity.length;
    }

    int size() {
        return wish.size();
    }

    /** Of the set that these places of an order make. */
    double of(int[] order, int from) {
        double[] some = new double[wish.size()];
        for (int i = 0; i < some.length; i++) {
            some[i] = capacity[order[from + i]];
        }
        double cost = wish.capacityWeight() * spread(some, some.length);
        for (int i = 0; i < some.length; i++) {
            some[i] = resistance[order[from + i]];
        }
        return cost + wish.resistanceWeight() * spread(some, some.length);
    }

    /** Of a whole order: its sets follow one another, what is left over comes last and costs nothing. */
    double of(int[] order) {
        double sum = 0;
        for (int from = 0; from + wish.size() <= order.length; from += wish.size()) {
            sum += of(order, from);
        }
        return sum;
    }

    /** By which an order is begun: cells that stand side by side are alike. */
    double rank(int cell, double mix) {
        return mix * capacity[cell] / mean(capacity) - (1 - mix) * resistance[cell] / mean(resistance);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Highest less lowest as a share of the mean; 0 of values that are all 0. */
    static double spread(double[] values, int count) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            low = Math.min(low, values[i]);
            high = Math.max(high, values[i]);
            sum += values[i];
        }
        return sum > 0 ? (high - low) * count / sum : 0;
    }
}
