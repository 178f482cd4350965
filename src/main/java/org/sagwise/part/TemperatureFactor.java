package org.sagwise.part;

/**
 * How a metal's resistance changes with temperature: straight lines through a published table,
 * counted from 20 °C. Below the table the first line runs on; above it the last value stays.
 */
public final class TemperatureFactor {

    /** Temperature at which the factor is 1 (°C). */
    public static final double REFERENCE_C = 20;

    private final double[] temperaturesC;
    private final double[] values;
    private final double atReference;

    private TemperatureFactor(double[] temperaturesC, double[] values) {
        this.temperaturesC = temperaturesC;
        this.values = values;
        this.atReference = value(REFERENCE_C);
    }

    /**
     * The factor through a table of resistances, resistivities or ratios; only their proportions
     * count.
     *
     * @param temperaturesC temperatures (°C), rising, two or more
     * @param values resistance of one piece at each temperature, in any unit, above 0
     */
    public static TemperatureFactor through(double[] temperaturesC, double[] values) {
        if (temperaturesC.length != values.length || temperaturesC.length < 2) {
            throw new IllegalArgumentException("a table needs two points or more, in pairs");
        }
        for (int i = 0; i < values.length; i++) {
            Require.finite(temperaturesC[i], "temperature");
            Require.positive(values[i], "value");
            if (i > 0 && temperaturesC[i] <= temperaturesC[i - 1]) {
                throw new IllegalArgumentException("temperatures must rise");
            }
        }
        return new TemperatureFactor(temperaturesC.clone(), values.clone());
    }

    /** The factor of a metal that does not change with heat. */
    public static TemperatureFactor constant() {
        return through(new double[] {0, 100}, new double[] {1, 1});
    }

    /** Resistance at this temperature (°C) over resistance at 20 °C; above 0. */
    public double at(double temperatureC) {
        return value(temperatureC) / atReference;
    }

    /** Highest temperature (°C) for which the table has a value of its own. */
    public double highestC() {
        return temperaturesC[temperaturesC.length - 1];
    }

    private double value(double temperatureC) {
        if (temperatureC >= temperaturesC[0]) {
            return Interpolation.clamped(temperaturesC, values, temperatureC);
        }
        double extended = Interpolation.between(temperaturesC, values, 0, temperatureC);
        // A steep first line must not reach zero, however cold somebody makes it.
        return Math.max(extended, 0.1 * values[0]);
    }
}
