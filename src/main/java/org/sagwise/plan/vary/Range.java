package org.sagwise.plan.vary;

/**
 * From one number to a greater one, as the file writes them.
 *
 * @param from the lower end
 * @param to the upper end, above it
 */
public record Range(double from, double to) {

    public Range {
        if (!(to > from)) {
            throw new IllegalArgumentException(from + " to " + to);
        }
    }

    /** The number at a share of the way, 0 to 1. */
    public double at(double share) {
        return share >= 1 ? to : from + share * (to - from);
    }

    /** Numbers in equal steps from end to end, at least two. */
    public double[] places(int count) {
        double[] places = new double[Math.max(2, count)];
        for (int i = 0; i < places.length; i++) {
            places[i] = at((double) i / (places.length - 1));
        }
        return places;
    }

    public boolean holds(double value) {
        return value >= from && value <= to;
    }
}
