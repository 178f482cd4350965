package org.sagwise.picture.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes a long curve short enough to be drawn: of each column of the picture its first, lowest,
 * highest and last point are kept, in order, so that no peak is lost.
 */
public final class Thinning {

    /** A point of a curve. */
    public record Point(double x, double value) {}

    private Thinning() {}

    /**
     * At most four points for each of so many columns.
     *
     * @param columns number of columns from the first place to the last, at least 1
     */
    public static List<Point> of(Curve curve, int columns) {
        double[] x = curve.x();
        List<Point> kept = new ArrayList<>();
        if (x.length == 0) {
            return kept;
        }
        double start = x[0];
        double width = Math.max(x[x.length - 1] - start, Double.MIN_NORMAL) / columns;
        int from = 0;
        while (from < x.length) {
            int column = column(x[from], start, width, columns);
            int until = from + 1;
            while (until < x.length && column(x[until], start, width, columns) == column) {
                until++;
            }
            keep(curve, from, until, kept);
            from = until;
        }
        return kept;
    }

    private static int column(double x, double start, double width, int columns) {
        return Math.min(columns - 1, (int) ((x - start) / width));
    }

    private static void keep(Curve curve, int from, int until, List<Point> kept) {
        int lowest = from;
        int highest = from;
        for (int i = from; i < until; i++) {
            lowest = curve.y()[i] < curve.y()[lowest] ? i : lowest;
            highest = curve.y()[i] > curve.y()[highest] ? i : highest;
        }
        int[] places = {from, Math.min(lowest, highest), Math.max(lowest, highest), until - 1};
        int last = -1;
        for (int place : places) {
            if (place > last) {
                kept.add(new Point(curve.x()[place], curve.y()[place]));
                last = place;
            }
        }
    }
}
