package org.sagwise.plan;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.CoilWire;

/** Finds the whole wraps whose ohms are next to wanted ones: nobody winds a third of a wrap. */
public final class WholeWraps {

    /** More than a person winds by hand, and a part of the bench takes. */
    public static final int MOST = 1_000;

    private WholeWraps() {}

    /** What came of the search. */
    public sealed interface Answer {

        /**
         * It can be wound.
         *
         * @param exactly wraps that would have just the ohms wanted
         * @param nearest whole wraps of next ohms
         * @param beside one wrap fewer and one more, where there are such
         */
        record Found(double exactly, CoilWinding nearest, List<CoilWinding> beside) implements Answer {
            public Found {
                beside = List.copyOf(beside);
            }
        }

        /**
         * Ends and a single wrap have more ohms already.
         *
         * @param leastOhm of a single wrap with these ends, Ω
         */
        record TooFewOhms(double leastOhm) implements Answer {}

        /**
         * It would take more wraps than anybody winds.
         *
         * @param wraps so many
         */
        record TooManyWraps(double wraps) implements Answer {}
    }

    /**
     * @param innerM diameter of what it is wound on (m), above 0
     * @param legsM both ends together (m), 0 or more
     * @param wantedOhm ohms at 20 °C, above 0
     */
    public static Answer of(CoilWire wire, double innerM, double legsM, double wantedOhm) {
        CoilWinding one = new CoilWinding(wire, 1, innerM, legsM);
        OptionalDouble exactly = CoilWinding.wrapsFor(wire, innerM, legsM, wantedOhm);
        // Half a wrap rounds up to one.
        if (exactly.isEmpty() || exactly.getAsDouble() < 0.5) {
            return new Answer.TooFewOhms(one.ohm());
        }
        double wraps = exactly.getAsDouble();
        if (wraps > MOST) {
            return new Answer.TooManyWraps(wraps);
        }
        int nearest = Math.max(1, (int) Math.round(wraps));
        List<CoilWinding> beside = IntStream.of(nearest - 1, nearest + 1)
                .filter(count -> count >= 1 && count <= MOST)
                .mapToObj(one::withWraps)
                .toList();
        return new Answer.Found(wraps, one.withWraps(nearest), beside);
    }
}
