package org.sagwise.part;

/**
 * A fuse. Its element stores heat and loses it again: the share of the heat that melts it grows by
 * i²/I²t and fades with a time constant so chosen that 1.2 times the rating, held for ever, just
 * melts it. So a short melts it after I²t/i², a small overload later, the rating never. A teaching
 * model; the factor 1.2 is from memory, no source at hand.
 *
 * @param card what the catalogue says about it
 * @param ratingA rated current (A), above 0
 * @param ohm resistance when cold (Ω), 0 or more
 * @param meltingA2s melting integral ∫i²dt of a quick melt (A²s), above 0
 */
public record FuseSpec(Card card, double ratingA, double ohm, double meltingA2s)
        implements CatalogueEntry {

    /** Current that just melts the fuse in the long run, as a multiple of its rating. */
    public static final double LEAST_MELTING_RATIO = 1.2;

    private static final double USUAL_MELTING_S = 1.3;

    public FuseSpec {
        Require.positive(ratingA, "ratingA");
        Require.notNegative(ohm, "ohm");
        Require.positive(meltingA2s, "meltingA2s");
    }

    /**
     * Melting integral (A²s) of a usual blade fuse of this rating (A): 1.3 s times the square of
     * the rating. Teaching value: typical ones have 1.0 to 1.7 s, from memory, no source at hand.
     */
    public static double usualMeltingA2s(double ratingA) {
        return USUAL_MELTING_S * ratingA * ratingA;
    }

    /** Smallest current (A) that melts it in the long run. */
    public double leastMeltingA() {
        return LEAST_MELTING_RATIO * ratingA;
    }

    /** Time in which 63 % of the stored heat is lost again (s). */
    public double timeConstantS() {
        return meltingA2s / (leastMeltingA() * leastMeltingA());
    }

    /**
     * Share of the melting heat in the element after {@code durationS} seconds of constant current:
     * exact, however long the step. It melts at 1.
     *
     * @param share share at the start, 0 or more
     * @param currentA current (A), either direction
     * @param durationS duration (s), 0 or more
     */
    public double after(double share, double currentA, double durationS) {
        double settled = settled(currentA);
        return settled + (share - settled) * Math.exp(-durationS / timeConstantS());
    }

    /**
     * Time (s) in which a constant current melts the fuse, starting from a share of the melting
     * heat; infinite where it never does, 0 where it has.
     */
    public double meltingTimeS(double share, double currentA) {
        if (share >= 1) {
            return 0;
        }
        double settled = settled(currentA);
        if (settled <= 1) {
            return Double.POSITIVE_INFINITY;
        }
        return timeConstantS() * Math.log((settled - share) / (settled - 1));
    }

    private double settled(double currentA) {
        double ratio = currentA / leastMeltingA();
        return ratio * ratio;
    }
}
