package org.sagwise.part;

/**
 * What a cell does that has nothing left and whose current others drive on: it resists, and all
 * that is put into it there becomes heat. It is no battery of negative voltage: turned round or
 * left alone it gives nothing back.
 *
 * <p>Its terminals go down to a plateau: about −12 % of charge is where Guo et al., Sci. Rep. 6,
 * 30248, 2016 saw it, and −1.3 to −1.5 V is the lowest that an 18650 showed that was driven with 1
 * C to a depth of discharge of 200 % (<i>Elucidating Copper Dissolution…</i>, J. Electrochem. Soc.
 * 165(9), A1639, 2018, abstract). Copper that dissolves there grows back as a bridge from one
 * electrode to the other, an internal short, which takes the terminals back toward 0 V and stays.
 * When the bridge begins is a teaching value, so chosen that the surface of that cell reaches the
 * published 79 °C in still air.
 *
 * <p>Depth is the charge that was driven through the cell after nothing was left, as a share of its
 * capacity.
 */
public final class Reversal {

    /** Voltage of the plateau (V), in size. */
    public static final double PLATEAU_V = 1.4;

    /**
     * Lowest voltage (V), in size, to which any current drives the terminals of an empty cell for
     * longer than a moment: the copper takes what is more.
     */
    public static final double LOWEST_V = 1.45;

    /** Time in which 63 % of a change toward it is made (s): teaching value. */
    public static final double TIME_CONSTANT_S = 0.3;

    /** Depth at which the plateau is reached: −12 % of charge, counted from −5 %. */
    private static final double PLATEAU_DEPTH = 0.07;

    /** Depth from which on copper bridges the electrodes: fitted, see above. */
    public static final double BRIDGE_DEPTH = 0.24;

    /** How fast the bridge grows with depth: teaching value. */
    private static final double BRIDGE_POWER = 3;

    /** Share of the current of one hour below which the plateau is not reached: teaching value. */
    private static final double SMALL_RATE = 0.05;

    private Reversal() {}

    /** How far below zero (V, in size) the plateau lies at a depth, whatever the current. */
    public static double plateauV(double depth) {
        return PLATEAU_V * Math.min(1, Math.max(0, depth) / PLATEAU_DEPTH);
    }

    /**
     * Resistance (Ω) of the copper that bridges the electrodes; infinite while there is none.
     *
     * @param depth share of the capacity driven through when empty
     * @param capacityAh capacity (Ah), above 0
     */
    public static double bridgeOhm(double depth, double capacityAh) {
        return depth <= BRIDGE_DEPTH
                ? Double.POSITIVE_INFINITY
                : PLATEAU_V / capacityAh * Math.pow(BRIDGE_DEPTH / depth, BRIDGE_POWER);
    }

    /**
     * Resistance (Ω) that a small current meets in an empty cell.
     *
     * @param capacityAh capacity (Ah), above 0
     */
    public static double smallCurrentOhm(double capacityAh) {
        return PLATEAU_V / (SMALL_RATE * capacityAh);
    }
}
