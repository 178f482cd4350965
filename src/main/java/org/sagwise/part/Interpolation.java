package org.sagwise.part;

import java.util.Arrays;

/** Straight lines between the points of a table. */
final class Interpolation {

    private Interpolation() {}

    /**
     * Value at {@code x} on the straight lines between the points; outside, the value of the
     * nearest end.
     *
     * @param xs rising
     * @param ys as many as {@code xs}
     */
    static double clamped(double[] xs, double[] ys, double x) {
        int last = xs.length - 1;
        if (x <= xs[0]) {
            return ys[0];
        }
        if (x >= xs[last]) {
            return ys[last];
        }
        int found = Arrays.binarySearch(xs, x);
        return found >= 0 ? ys[found] : between(xs, ys, -found - 2, x);
    }

    /** Value at {@code x} on the straight line through points {@code i} and {@code i + 1}. */
    static double between(double[] xs, double[] ys, int i, double x) {
        double share = (x - xs[i]) / (xs[i + 1] - xs[i]);
        return ys[i] + share * (ys[i + 1] - ys[i]);
    }
}
