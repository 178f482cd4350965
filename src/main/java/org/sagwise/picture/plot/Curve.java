package org.sagwise.picture.plot;

import java.util.Arrays;
import org.sagwise.picture.look.Series;

/**
 * A line: a quantity over time or over another one. Its arrays are not changed once it is made.
 *
 * @param name what it is, for people
 * @param series how its line looks
 * @param weight whether it stands in front
 * @param x moments, s, or places, in order; two at one place where the quantity jumps
 * @param y its value at each, in the unit of its chart; NaN where there is none
 */
public record Curve(String name, Series series, Weight weight, double[] x, double[] y) {

    /** How strongly a line is drawn. */
    public enum Weight {
        MAIN,
        /** Beside a main line of the same colour. */
        BESIDE
    }

    public Curve {
        if (x.length != y.length) {
            throw new IllegalArgumentException(x.length + " places but " + y.length + " values");
        }
    }

    /**
     * The value at a place, on the line between its neighbours; where it jumps, the later one.
     *
     * @return NaN outside
     */
    public double at(double at) {
        if (x.length == 0 || at < x[0] || at > x[x.length - 1]) {
            return Double.NaN;
        }
        int after = firstAfter(at);
        if (after == x.length || x[after - 1] == at) {
            return y[after - 1];
        }
        double share = (at - x[after - 1]) / (x[after] - x[after - 1]);
        return y[after - 1] + share * (y[after] - y[after - 1]);
    }

    /** Index of the first place after this one; the number of places if there is none. */
    private int firstAfter(double at) {
        int low = 0;
        int high = x.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (x[middle] <= at) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    public double least() {
        return Arrays.stream(y).filter(Double::isFinite).min().orElse(Double.NaN);
    }

    public double most() {
        return Arrays.stream(y).filter(Double::isFinite).max().orElse(Double.NaN);
    }
}
