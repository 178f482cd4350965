package org.sagwise.picture.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines of equal value in a field, by marching squares: on each side of a square of four places
 * that the value passes, it lies on the straight line between the ends.
 */
public final class Contours {

    /** A piece of a contour within one square, in the values of the axes. */
    public record Piece(double x1, double y1, double x2, double y2) {}

    private Contours() {}

    /** The pieces of one contour; none in a square that has a gap at a corner. */
    public static List<Piece> of(Field field, double level) {
        List<Piece> pieces = new ArrayList<>();
        for (int row = 0; row + 1 < field.y().length; row++) {
            for (int column = 0; column + 1 < field.x().length; column++) {
                square(field, level, column, row, pieces);
            }
        }
        return pieces;
    }

    private static void square(Field field, double level, int column, int row, List<Piece> pieces) {
        double left = field.x()[column];
        double right = field.x()[column + 1];
        double low = field.y()[row];
        double high = field.y()[row + 1];
        double[] below = field.values()[row];
        double[] above = field.values()[row + 1];
        double foot = share(below[column], below[column + 1], level);
        double head = share(above[column], above[column + 1], level);
        double west = share(below[column], above[column], level);
        double east = share(below[column + 1], above[column + 1], level);
        if (!Double.isFinite(below[column] + below[column + 1] + above[column] + above[column + 1])) {
            return;
        }
        List<double[]> ends = new ArrayList<>();
        add(ends, foot, left + foot * (right - left), low);
        add(ends, east, right, low + east * (high - low));
        add(ends, head, left + head * (right - left), high);
        add(ends, west, left, low + west * (high - low));
        // In a saddle the pieces of two neighbouring sides belong together: either pair is as good.
        for (int i = 0; i + 1 < ends.size(); i += 2) {
            double[] from = ends.get(i);
            double[] to = ends.get(i + 1);
            pieces.add(new Piece(from[0], from[1], to[0], to[1]));
        }
    }

    private static void add(List<double[]> ends, double share, double x, double y) {
        if (share >= 0) {
            ends.add(new double[] {x, y});
        }
    }

    /** How far from one end the level is passed; -1 if it is not. */
    private static double share(double from, double to, double level) {
        return from < level == to < level ? -1 : (level - from) / (to - from);
    }
}
