package org.sagwise.part;

/**
 * How the element of a fuse melts. It stores heat and loses it again: the share of the heat that
 * melts it grows by i²/I²t and fades with a time constant so chosen that 1.2 times the rating, held
 * for ever, just melts it. So a short melts it after I²t/i², a small overload later, the rating
 * never. A teaching model; the factor 1.2 is from memory, no source at hand.
 *
 * @param ratingA rated current (A), above 0
 * @param meltingA2s melting integral ∫i²dt of a quick melt (A²s), above 0
 */
public record FuseMelting(double ratingA, double meltingA2s) {

    /** Current that just melts the fuse in the long run, as a multiple of its rating. */
    public static final double LEAST_MELTING_RATIO = 1.2;

    public FuseMelting {
        Require.positive(ratingA, "ratingA");
        Require.positive(meltingA2s, "meltingA2s");
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
