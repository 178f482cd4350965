package org.sagwise.run;

import java.util.Arrays;
import org.sagwise.part.CoilThermal;

/**
 * What a coil or wire loses against its temperature, by straight lines between points that are
 * worked out when first asked for: 10 K apart they lie within 0.02 % of the curve.
 */
final class LossCurve {

    private static final double FIRST_C = -100;
    private static final double APART_K = 10;
    private static final int POINTS = 400;

    private final CoilThermal thermal;
    private final double ambientC;
    private final double[] watt = new double[POINTS];

    LossCurve(CoilThermal thermal, double ambientC) {
        this.thermal = thermal;
        this.ambientC = ambientC;
        Arrays.fill(watt, Double.NaN);
    }

    /** Mean of e^−x over the way from 0 to z. */
    static double share(double z) {
        return Math.abs(z) < 1e-9 ? 1 : -Math.expm1(-z) / z;
    }

    private int below(double temperatureC) {
        return (int) Math.max(0, Math.min(POINTS - 2, Math.floor((temperatureC - FIRST_C) / APART_K)));
    }

    private double point(int i) {
        if (Double.isNaN(watt[i])) {
            watt[i] = thermal.lossW(FIRST_C + i * APART_K, ambientC);
        }
        return watt[i];
    }

    /** How much more is lost for each degree at this temperature (°C), W/K. */
    double slopeWPerK(double temperatureC) {
        return slopeWPerK(below(temperatureC));
    }

    /**
     * Temperature (°C) after constant power, exact for this curve: along each of its straight lines
     * the way to where it settles is an exponential.
     *
     * @param powerW power, W
     * @param heatCapacityJPerK heat that warms by one degree, J/K
     * @param seconds how long, 0 or more
     */
    double after(double temperatureC, double powerW, double heatCapacityJPerK, double seconds) {
        double atC = temperatureC;
        double leftS = seconds;
        int i = below(atC);
        while (leftS > 0) {
            double perS = slopeWPerK(i) / heatCapacityJPerK;
            double line = point(i) + (atC - FIRST_C - i * APART_K) * slopeWPerK(i);
            double rate = (powerW - line) / heatCapacityJPerK;
            int next = rate > 0 ? i + 1 : i - 1;
            double borderC = FIRST_C + (rate > 0 ? i + 1 : i) * APART_K;
            double borderS = next < 0 || next > POINTS - 2 || rate == 0
                    ? Double.POSITIVE_INFINITY
                    : timeS(rate, perS, borderC - atC);
            if (!(borderS < leftS)) {
                return atC + rate * leftS * share(perS * leftS);
            }
            atC = borderC;
            leftS -= borderS;
            i = next;
        }
        return atC;
    }

    /** Time for this change, beginning at this rate (K/s), which fades with the change; or never. */
    private static double timeS(double rate, double perS, double changeK) {
        double faded = perS * changeK / rate;
        if (faded >= 1) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.abs(faded) < 1e-9 ? changeK / rate : -Math.log1p(-faded) / perS;
    }

    private double slopeWPerK(int i) {
        return (point(i + 1) - point(i)) / APART_K;
    }
}
