package org.sagwise.part;

import org.sagwise.part.key.EffectiveKeys;

/**
 * A reverse guard: it lets current through from {@code in} to {@code out} and not back, and costs a
 * fixed voltage and a resistance.
 *
 * @param ohm its resistance while it conducts (Ω), 0 or more
 * @param dropV voltage that it keeps whatever the current is (V), 0 or more; 0 for a transistor
 * @param ratingA largest current that it bears in the long run (A), above 0
 */
public record ReverseGuardSpec(double ohm, double dropV, double ratingA) {

    public ReverseGuardSpec {
        Require.notNegative(ohm, "ohm");
        Require.notNegative(dropV, "dropV");
        Require.positive(ratingA, "ratingA");
    }

    /** The guard that these values describe. */
    public static ReverseGuardSpec of(EffectiveKeys values) {
        return new ReverseGuardSpec(values.milli("mohm"), values.need("drop_V"), values.need("rating_A"));
    }
}
