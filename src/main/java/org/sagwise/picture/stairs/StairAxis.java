package org.sagwise.picture.stairs;

import java.util.ArrayList;
import java.util.List;

/**
 * Volts as height.
 *
 * @param zeroV potential that is called zero on the axis, V
 * @param lowV potential at the lower edge, V
 * @param highV potential at the upper edge, V
 * @param top upper edge
 * @param bottom lower edge
 */
record StairAxis(double zeroV, double lowV, double highV, double top, double bottom) {

    double y(double potentialV) {
        return bottom - (potentialV - lowV) / (highV - lowV) * (bottom - top);
    }

    /** Pixels for a volt. */
    double perVolt() {
        return (bottom - top) / (highV - lowV);
    }

    /** Distance of ticks: 1, 2 or 5 times a power of ten, not closer than so many pixels. */
    double tickV(double leastPixels) {
        double least = leastPixels / perVolt();
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double times : new double[] {1, 2, 5}) {
            if (times * power >= least) {
                return times * power;
            }
        }
        return 10 * power;
    }

    /** Potentials at which ticks stand, V. */
    List<Double> ticks(double leastPixels) {
        double step = tickV(leastPixels);
        List<Double> ticks = new ArrayList<>();
        for (double n = Math.ceil((lowV - zeroV) / step - 1e-9); zeroV + n * step <= highV + 1e-9; n++) {
            ticks.add(zeroV + n * step);
        }
        return ticks;
    }
}
