package org.sagwise.run;

import java.util.OptionalDouble;

/**
 * What a run takes for given besides its bench.
 *
 * @param cutoffV cut-off for all cells instead of their own, V
 * @param spread how far constants stand from their usual values
 * @param fineness factor on the errors that a step may make: 1 as usual, less for a reference
 */
public record RunSettings(OptionalDouble cutoffV, Spread spread, double fineness) {

    /** Each cell's own cut-off and the usual constants. */
    public static final RunSettings USUAL = new RunSettings(OptionalDouble.empty(), Spread.USUAL, 1);

    public RunSettings {
        if (!(fineness > 0)) {
            throw new IllegalArgumentException("fineness must be above 0 but is " + fineness);
        }
    }

    /** The same with one cut-off for all cells, V. */
    public RunSettings withCutoffV(double volts) {
        return new RunSettings(OptionalDouble.of(volts), spread, fineness);
    }

    /** The same with other constants. */
    public RunSettings with(Spread other) {
        return new RunSettings(cutoffV, other, fineness);
    }

    /** The same with another fineness. */
    public RunSettings withFineness(double other) {
        return new RunSettings(cutoffV, spread, other);
    }
}
