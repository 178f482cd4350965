package org.sagwise.picture.plot;

import org.sagwise.picture.look.Series;

/**
 * What lies between two lines. Its arrays are not changed once it is made.
 *
 * @param name what it is, for people
 * @param series its colour
 * @param x places in order
 * @param low its lower edge at each place; NaN where there is none
 * @param high its upper edge
 */
public record Band(String name, Series series, double[] x, double[] low, double[] high) {

    public Band {
        if (x.length != low.length || x.length != high.length) {
            throw new IllegalArgumentException(x.length + " places but " + low.length + " and " + high.length);
        }
    }

    /** Its lower edge as a line. */
    public Curve lower() {
        return new Curve(name, series, Curve.Weight.BESIDE, x, low);
    }

    /** Its upper edge as a line. */
    public Curve upper() {
        return new Curve(name, series, Curve.Weight.BESIDE, x, high);
    }
}
