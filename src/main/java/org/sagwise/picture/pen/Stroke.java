package org.sagwise.picture.pen;

import java.util.Arrays;
import java.util.List;

/**
 * How a line is drawn; its joins are round.
 *
 * @param dashes dashes and gaps in turn, empty for a whole line
 */
public record Stroke(double width, Ends ends, List<Double> dashes) {

    /** How a line ends, and each of its dashes. */
    public enum Ends {
        ROUND,
        BLUNT
    }

    public Stroke {
        dashes = List.copyOf(dashes);
    }

    /** A whole line with round ends. */
    public static Stroke round(double width) {
        return new Stroke(width, Ends.ROUND, List.of());
    }

    /** A whole line that ends where its last point is. */
    public static Stroke blunt(double width) {
        return new Stroke(width, Ends.BLUNT, List.of());
    }

    /** Dashes with blunt ends. */
    public static Stroke dashed(double width, double... dashes) {
        return new Stroke(width, Ends.BLUNT, Arrays.stream(dashes).boxed().toList());
    }
}
