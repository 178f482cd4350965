package org.sagwise.part;

import org.sagwise.part.key.EffectiveKeys;

/**
 * A regulated board: it takes what current it needs to hold the power at its output. A limit that
 * nobody gave does not bind.
 *
 * @param powerW highest power at the output (W), above 0
 * @param efficiency output power over input power, above 0, at most 1
 * @param cutoffV input voltage under load below which it stops (V), 0 or more
 * @param maxInputA highest input current (A), above 0
 * @param outMinV lowest output voltage (V), 0 or more
 * @param outMaxV highest output voltage (V), not below the lowest
 */
public record BoardSpec(
        double powerW, double efficiency, double cutoffV, double maxInputA, double outMinV, double outMaxV) {

    /** Largest value taken where a limit is not given: beyond any bench. */
    private static final double UNBOUND = 1e6;

    public BoardSpec {
        Require.positive(powerW, "powerW");
        Require.share(efficiency, "efficiency");
        Require.notNegative(cutoffV, "cutoffV");
        Require.positive(maxInputA, "maxInputA");
        Require.notNegative(outMinV, "outMinV");
        Require.positive(outMaxV, "outMaxV");
        if (outMaxV < outMinV) {
            throw new IllegalArgumentException("outMaxV must not lie below outMinV");
        }
    }

    /** The board that these values describe. */
    public static BoardSpec of(EffectiveKeys values) {
        double outMinV = values.number("out_min_V").orElse(0);
        return new BoardSpec(
                values.need("power_W"),
                values.need("efficiency"),
                values.number("cutoff_V").orElse(0),
                values.number("max_input_A").orElse(UNBOUND),
                outMinV,
                Math.max(outMinV, values.number("out_max_V").orElse(UNBOUND)));
    }

    /** Input current (A) at full power and this input voltage (V), limits aside. */
    public double inputA(double inputV) {
        return powerW / (efficiency * inputV);
    }
}
