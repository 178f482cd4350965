package org.sagwise.picture.scene;

import java.util.Optional;
import org.sagwise.picture.look.ColourScale;
import org.sagwise.picture.pen.Colour;
import org.sagwise.reading.Readings;

/**
 * How potentials are shown in colour.
 *
 * @param lowV potential at the dark end, V; never above 0
 * @param highV potential at the bright end, V; above the dark one
 */
public record PotentialScale(double lowV, double highV) {

    private static final double LEAST_SPAN_V = 0.1;

    /** A scale that spans every potential of some readings, and 0. */
    public static PotentialScale of(Readings readings) {
        double low = 0;
        double high = LEAST_SPAN_V;
        for (double potential : readings.nodes().values()) {
            if (Double.isFinite(potential)) {
                low = Math.min(low, potential);
                high = Math.max(high, potential);
            }
        }
        return new PotentialScale(low, high);
    }

    /** Whether there is anything to read off: without a cell, or while it is to be foretold, nothing has a potential. */
    public static boolean isNeeded(Readings readings) {
        return readings.nodes().values().stream().anyMatch(potential -> Math.abs(potential) > 0);
    }

    /** Where a potential lies: 0 at the dark end, 1 at the bright one. */
    public double share(double potentialV) {
        return (potentialV - lowV) / (highV - lowV);
    }

    /** The colour of a potential; empty where there is none (NaN). */
    public Optional<Colour> colour(double potentialV) {
        return Double.isNaN(potentialV) ? Optional.empty() : Optional.of(ColourScale.CIVIDIS.at(share(potentialV)));
    }
}
