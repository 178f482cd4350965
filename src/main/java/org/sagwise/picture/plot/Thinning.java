package org.sagwise.picture.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes a long curve short enough to be drawn: of each column of the picture its first, lowest,
 * highest and last point are kept, in order of time, so that no peak is lost.
 */
public final class Thinning {

    /** A point of a curve. */
    public record Point(double timeS, double value) {}

    private Thinning() {}

    /**
     * At most four points for each of so many columns.
     *
     * @param columns number of columns from the first moment to the last, at least 1
     */
    public static List<Point> of(Curve curve, int columns) {
        double[] time = curve.timeS();
        List<Point> kept = new ArrayList<>();
        if (time.length == 0) {
            return kept;
        }
        double startS = time[0];
        double widthS = Math.max(time[time.length - 1] - startS, Double.MIN_NORMAL) / columns;
        int from = 0;
        while (from < time.length) {
            int column = column(time[from], startS, widthS, columns);
            int until = from + 1;
            while (until < time.length && column(time[until], startS, widthS, columns) == column) {
                until++;
            }
            keep(curve, from, until, kept);
            from = until;
        }
        return kept;
    }

    private static int column(double timeS, double startS, double widthS, int columns) {
        return Math.min(columns - 1, (int) ((timeS - startS) / widthS));
    }

    private static void keep(Curve curve, int from, int until, List<Point> kept) {
        int lowest = from;
        int highest = from;
        for (int i = from; i < until; i++) {
            lowest = curve.values()[i] < curve.values()[lowest] ? i : lowest;
            highest = curve.values()[i] > curve.values()[highest] ? i : highest;
        }
        int[] places = {from, Math.min(lowest, highest), Math.max(lowest, highest), until - 1};
        int last = -1;
        for (int place : places) {
            if (place > last) {
                kept.add(new Point(curve.timeS()[place], curve.values()[place]));
                last = place;
            }
        }
    }
}
