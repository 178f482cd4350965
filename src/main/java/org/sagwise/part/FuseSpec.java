package org.sagwise.part;

import org.sagwise.part.key.EffectiveKeys;

/**
 * A fuse.
 *
 * @param ratingA rated current (A), above 0
 * @param ohm resistance when cold (Ω), 0 or more
 * @param meltingA2s melting integral ∫i²dt of a quick melt (A²s), above 0
 */
public record FuseSpec(double ratingA, double ohm, double meltingA2s) {

    /** As {@link FuseMelting#LEAST_MELTING_RATIO}. */
    public static final double LEAST_MELTING_RATIO = FuseMelting.LEAST_MELTING_RATIO;

    private static final double USUAL_MELTING_S = 1.3;

    public FuseSpec {
        Require.positive(ratingA, "ratingA");
        Require.notNegative(ohm, "ohm");
        Require.positive(meltingA2s, "meltingA2s");
    }

    /** The fuse that these values describe. */
    public static FuseSpec of(EffectiveKeys values) {
        return new FuseSpec(values.need("rating_A"), values.milli("mohm"), values.need("i2t_A2s"));
    }

    /**
     * Melting integral (A²s) of a usual blade fuse of this rating (A): 1.3 s times the square of
     * the rating. Teaching value: typical ones have 1.0 to 1.7 s, from memory, no source at hand.
     */
    public static double usualMeltingA2s(double ratingA) {
        return USUAL_MELTING_S * ratingA * ratingA;
    }

    /** How its element melts. */
    public FuseMelting melting() {
        return new FuseMelting(ratingA, meltingA2s);
    }
}
