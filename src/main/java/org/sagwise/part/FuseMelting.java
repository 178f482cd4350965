package org.sagwise.part;

/**
 * How the element of a fuse melts. It stores heat in two places and loses it again: in the element
 * itself, within a second or so, and in what holds it, within half a minute. Both shares of the
 * melting heat grow with i²; 1.2 times the rating, held for ever, just melts it. So a short melts
 * it after I²t/i², a small overload after tens of seconds, the rating never. A teaching model; the
 * factor 1.2 is from memory, no source at hand.
 *
 * @param ratingA rated current (A), above 0
 * @param meltingA2s melting integral ∫i²dt of a quick melt (A²s), above 0
 */
public record FuseMelting(double ratingA, double meltingA2s) {

    /** Current that just melts the fuse in the long run, as a multiple of its rating. */
    public static final double LEAST_MELTING_RATIO = 1.2;

    /** Share of the heat that is in the element itself: teaching value. */
    private static final double ELEMENT_SHARE = 0.6;

    /**
     * Time in which 63 % of a change is made in what holds the element (s): teaching value, so
     * chosen that 135 % of the rating melts it in the middle of the band of blade fuses, 0.75 to 600
     * s (ISO 8820-3, from memory).
     */
    private static final double HOLDER_S = 30;

    public FuseMelting {
        Require.positive(ratingA, "ratingA");
        Require.positive(meltingA2s, "meltingA2s");
    }

    /** Smallest current (A) that melts it in the long run. */
    public double leastMeltingA() {
        return LEAST_MELTING_RATIO * ratingA;
    }

    /** Time in which 63 % of a change is made in the element itself (s). */
    public double elementS() {
        return ELEMENT_SHARE * meltingA2s / (leastMeltingA() * leastMeltingA());
    }

    /**
     * Share of the melting heat in the element itself after {@code durationS} seconds of constant
     * current: exact, however long the step. The fuse melts when both shares together reach 1.
     *
     * @param share share at the start, 0 or more
     * @param currentA current (A), either direction
     * @param durationS duration (s), 0 or more
     */
    public double element(double share, double currentA, double durationS) {
        return toward(ELEMENT_SHARE * settled(currentA), share, durationS / elementS());
    }

    /** The same in what holds the element. */
    public double holder(double share, double currentA, double durationS) {
        return toward((1 - ELEMENT_SHARE) * settled(currentA), share, durationS / HOLDER_S);
    }

    private static double toward(double settled, double share, double times) {
        return settled + (share - settled) * Math.exp(-times);
    }

    /** Time (s) in which a constant current melts the cold fuse; infinite where it never does. */
    public double meltingTimeS(double currentA) {
        if (settled(currentA) <= 1) {
            return Double.POSITIVE_INFINITY;
        }
        double high = HOLDER_S;
        while (heat(currentA, high) < 1) {
            high *= 2;
        }
        double low = 0;
        while (high - low > 1e-9 * high) {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high) {
                break;
            }
            if (heat(currentA, middle) < 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private double heat(double currentA, double seconds) {
        return element(0, currentA, seconds) + holder(0, currentA, seconds);
    }

    private double settled(double currentA) {
        double ratio = currentA / leastMeltingA();
        return ratio * ratio;
    }
}
