package org.sagwise.part;

/**
 * How far resistance wire may lie from its nominal diameter. A supplier's table of what it delivers ("Size Range |
 * Tolerance", resistancewires.co.uk); another one (resistancealloy.com, in the sizes of GB/T 1234) allows half as much
 * again. From the same table: resistance per length within 5 % above 0.15 mm, whatever the diameter.
 */
public final class WireTolerance {

    private static final double M_PER_MM = 1e-3;

    /** Up to this diameter (mm, excluded) ... */
    private static final double[] UP_TO_MM = {0.051, 0.375, 0.801, 1.25, 2.00, 3.25, 4.75, 5.50};

    /** ... within this to either side (mm). The table prints 0.00254 for 3.25 to 4.75 mm, beside 0.001 in: a slip. */
    private static final double[] WITHIN_MM = {0.00254, 0.0051, 0.0102, 0.0127, 0.0152, 0.0203, 0.0254, 0.0381};

    private WireTolerance() {}

    /**
     * Half the width of the tolerance (m).
     *
     * @param diameterM nominal diameter (m), above 0; thicker wire than in the table has that of its last row
     */
    public static double withinM(double diameterM) {
        Require.positive(diameterM, "diameterM");
        int row = 0;
        while (row < UP_TO_MM.length - 1 && diameterM / M_PER_MM >= UP_TO_MM[row]) {
            row++;
        }
        // Thinner wire than 0.0254 mm is not in the table: no more than its first row allows there.
        return Math.min(WITHIN_MM[row] * M_PER_MM, 0.1 * diameterM);
    }
}
