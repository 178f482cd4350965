package org.sagwise.plan.pack;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.hazard.Caution;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunEvent;
import org.sagwise.scenario.Scenario;

/**
 * One layout that was built, solved and, unless a cell is over its limit at once, run.
 *
 * @param cell what the cells are called
 * @param rows cells in a row
 * @param side rows side by side
 * @param bench the bench that all these numbers are of
 * @param coilOhm its coil (Ω)
 * @param awg gauge of its wires
 * @param fuseA rating of its fuse (A); empty where the catalogue has none between the current and the cells' limit
 * @param full with full cells, relaxed, coil cold
 * @param half with half-full cells, the same
 * @param course how it runs down; empty where it was not run
 * @param cautions what a competent person would be told, the gravest first
 * @param verdict whether it is what was wished
 */
public record PackChoice(
        String cell,
        int rows,
        int side,
        Scenario bench,
        double coilOhm,
        int awg,
        OptionalDouble fuseA,
        PackMoment full,
        PackMoment half,
        Optional<Course> course,
        List<Caution> cautions,
        Verdict verdict) {

    public PackChoice {
        cautions = List.copyOf(cautions);
    }

    /** Whether a layout is what was wished; the best first. */
    public enum Verdict {
        /** It is, within every limit, and nothing grave is flagged. */
        FITS,
        /** It was followed no further than its lower bound of time, which is less than the wish. */
        UNKNOWN,
        /** It does not last as long as wished. */
        TOO_SHORT,
        /** Nobody knows what its cells may give. */
        NO_LIMIT,
        /** A caution of WARNING or DANGER stands against it. */
        FLAGGED,
        /** A cell gives more than its limit. */
        OVER_LIMIT
    }

    /**
     * How it runs down, pressed in the usual way.
     *
     * @param timeS until it ends, rests included (s)
     * @param firedS with the button held (s)
     * @param presses how many
     * @param end what ended it
     * @param first what gave first; empty where nothing did
     * @param last at the end, the button held
     * @param peakShare largest share of its limit that a cell gave
     * @param peakC highest temperature of a cell (°C)
     */
    public record Course(
            double timeS,
            double firedS,
            int presses,
            RunEnd end,
            Optional<RunEvent> first,
            PackMoment last,
            double peakShare,
            double peakC) {

        /** Whether it lasts longer than could be followed. */
        public boolean isLowerBound() {
            return end == RunEnd.TOO_LONG;
        }
    }

    public int cells() {
        return rows * side;
    }

    /** How a line of trade words calls it: {@code 2s2p}. */
    public String layout() {
        if (rows == 1) {
            return side == 1 ? "1s" : side + "p";
        }
        return side == 1 ? rows + "s" : rows + "s" + side + "p";
    }

    /** Largest share of its limit that a cell gives at any moment looked at; NaN where no limit is known. */
    public double share() {
        double so = Math.max(full.share(), half.share());
        return course.map(it -> Math.max(so, it.peakShare())).orElse(so);
    }

    /** Whether the cells lie in a row: then only a board that looks at each of them ends in time. */
    public boolean needsWatching() {
        return rows > 1;
    }
}
