package org.sagwise.network;

/**
 * How well a solution obeys Kirchhoff's laws, recomputed from the finished currents and potentials.
 * Islands without an answer are left out.
 *
 * @param kclWorstA largest sum of currents at one node (A)
 * @param largestCurrentA largest current in one element (A)
 * @param kvlWorstV largest difference between an element's voltage and the voltage between its
 *     nodes (V)
 * @param powerErrorW power delivered by all sources less power absorbed (W)
 * @param suppliedW power delivered by those sources that deliver (W)
 */
public record Residual(
        double kclWorstA, double largestCurrentA, double kvlWorstV, double powerErrorW, double suppliedW) {

    /** {@link #kclWorstA} over {@link #largestCurrentA}; 0 where no current flows. */
    public double kclRelative() {
        return largestCurrentA == 0 ? 0 : kclWorstA / largestCurrentA;
    }

    /** {@link #powerErrorW} without sign over {@link #suppliedW}; 0 where no power is supplied. */
    public double powerRelative() {
        return suppliedW == 0 ? 0 : Math.abs(powerErrorW) / suppliedW;
    }
}
