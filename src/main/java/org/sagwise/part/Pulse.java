package org.sagwise.part;

/**
 * More current for a short while: what a maker allows beyond the continuous limit.
 *
 * @param currentA current of the burst (A), above 0
 * @param durationS longest burst (s), above 0
 */
public record Pulse(double currentA, double durationS) {

    public Pulse {
        Require.positive(currentA, "currentA");
        Require.positive(durationS, "durationS");
    }
}
