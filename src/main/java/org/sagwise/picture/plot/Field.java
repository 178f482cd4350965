package org.sagwise.picture.plot;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A quantity over two others. Its arrays are not changed once it is made.
 *
 * @param of what it is and how it is written
 * @param x places along the level axis, rising, at least 2
 * @param y places along the upright axis, rising, at least 2
 * @param values the quantity, a row for each y; NaN where there is none
 */
public record Field(Axis of, double[] x, double[] y, double[][] values) {

    public Field {
        if (x.length < 2 || y.length < 2 || values.length != y.length) {
            throw new IllegalArgumentException(x.length + " × " + y.length + " places, " + values.length + " rows");
        }
    }

    /** Its scale of colours, marked where the contours lie. */
    PlotScale scale(int ticks) {
        double[] all = Stream.of(values)
                .flatMapToDouble(DoubleStream::of)
                .filter(Double::isFinite)
                .toArray();
        double low = DoubleStream.of(all).min().orElse(0);
        double high = DoubleStream.of(all).max().orElse(1);
        return PlotScale.ofRange(low, high > low ? high : low + 1e-9 + Math.abs(low) * 1e-6, ticks);
    }

    /** The quantity between four places, on straight lines; NaN outside and beside a gap. */
    public double at(double atX, double atY) {
        int column = cell(x, atX);
        int row = cell(y, atY);
        if (column < 0 || row < 0) {
            return Double.NaN;
        }
        double right = (atX - x[column]) / (x[column + 1] - x[column]);
        double up = (atY - y[row]) / (y[row + 1] - y[row]);
        return (1 - up) * between(values[row], column, right) + up * between(values[row + 1], column, right);
    }

    private static double between(double[] row, int column, double share) {
        return share == 0
                ? row[column]
                : share == 1 ? row[column + 1] : (1 - share) * row[column] + share * row[column + 1];
    }

    /** The place before a value that has another one after it; -1 outside. */
    private static int cell(double[] places, double value) {
        if (!(value >= places[0] && value <= places[places.length - 1])) {
            return -1;
        }
        int place = 0;
        while (place < places.length - 2 && places[place + 1] <= value) {
            place++;
        }
        return place;
    }
}
