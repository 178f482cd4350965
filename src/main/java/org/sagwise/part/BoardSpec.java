package org.sagwise.part;

/**
 * A regulated board: it takes what current it needs to hold the power at its output.
 *
 * @param card what the catalogue says about it
 * @param powerW highest power at the output (W), above 0
 * @param efficiency output power over input power, above 0, at most 1
 * @param cutoffV input voltage under load below which it stops (V), above 0
 * @param maxInputA highest input current (A), above 0
 * @param outMinV lowest output voltage (V), 0 or more
 * @param outMaxV highest output voltage (V), above the lowest
 */
public record BoardSpec(
        Card card, double powerW, double efficiency, double cutoffV, double maxInputA, double outMinV, double outMaxV)
        implements CatalogueEntry {

    public BoardSpec {
        Require.positive(powerW, "powerW");
        Require.share(efficiency, "efficiency");
        Require.positive(cutoffV, "cutoffV");
        Require.positive(maxInputA, "maxInputA");
        Require.notNegative(outMinV, "outMinV");
        Require.positive(outMaxV, "outMaxV");
        if (outMaxV <= outMinV) {
            throw new IllegalArgumentException("outMaxV must lie above outMinV");
        }
    }

    /** Input current (A) at full power and this input voltage (V), limits aside. */
    public double inputA(double inputV) {
        return powerW / (efficiency * inputV);
    }
}
