package org.sagwise.picture.plot;

import java.util.Arrays;
import org.sagwise.picture.look.Series;

/**
 * A quantity over time. Its arrays are not changed once it is made.
 *
 * @param name what it is, for people
 * @param series how its line looks
 * @param weight whether it stands in front
 * @param timeS moments in order, s; two at one time where the quantity jumps
 * @param values its value at each moment, in the unit of its chart; NaN where there is none
 */
public record Curve(String name, Series series, Weight weight, double[] timeS, double[] values) {

    /** How strongly a line is drawn. */
    public enum Weight {
        MAIN,
        /** Beside a main line of the same colour. */
        BESIDE
    }

    public Curve {
        if (timeS.length != values.length) {
            throw new IllegalArgumentException(timeS.length + " moments but " + values.length + " values");
        }
    }

    /**
     * The value at a moment, on the line between its neighbours; where it jumps, the later one.
     *
     * @return NaN outside
     */
    public double at(double momentS) {
        if (timeS.length == 0 || momentS < timeS[0] || momentS > timeS[timeS.length - 1]) {
            return Double.NaN;
        }
        int after = firstAfter(momentS);
        if (after == timeS.length || timeS[after - 1] == momentS) {
            return values[after - 1];
        }
        double share = (momentS - timeS[after - 1]) / (timeS[after] - timeS[after - 1]);
        return values[after - 1] + share * (values[after] - values[after - 1]);
    }

    /** Place of the first moment after this one; the number of moments if there is none. */
    private int firstAfter(double momentS) {
        int low = 0;
        int high = timeS.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (timeS[middle] <= momentS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    public double least() {
        return Arrays.stream(values).filter(Double::isFinite).min().orElse(Double.NaN);
    }

    public double most() {
        return Arrays.stream(values).filter(Double::isFinite).max().orElse(Double.NaN);
    }
}
