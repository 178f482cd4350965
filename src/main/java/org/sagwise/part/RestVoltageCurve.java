package org.sagwise.part;

import java.util.Arrays;

/**
 * Rest voltage of a cell against its charge, and back: a strictly rising curve through a table of
 * points.
 *
 * <p>Between the points it is a monotone piecewise cubic: slopes at the points by the weighted
 * harmonic mean of Fritsch and Butland (<i>A method for constructing local monotone piecewise cubic
 * interpolants</i>, SIAM J. Sci. Stat. Comput. 5, 1984), which keeps it inside the monotonicity
 * region of Fritsch and Carlson (<i>Monotone piecewise cubic interpolation</i>, SIAM J. Numer.
 * Anal. 17, 1980). So it never overshoots and has a continuous slope, and each voltage belongs to
 * one charge. Beyond the last point it runs on as a straight line with the slope it has there. Below
 * the first it stays level: nothing is stored there, and a lower voltage belongs to no charge.
 *
 * <p>Charge is a share of the capacity: 0 empty, 1 full. Values outside 0–1 stand for abuse.
 */
public final class RestVoltageCurve {

    /** Least rise from half charge to full that is taken for a cell of the same kind (V). */
    private static final double LEAST_UPPER_HALF_V = 0.1;

    /** Half of 1/√3, the place of the points of Gauss's rule in an interval of length 1. */
    private static final double GAUSS_POINT = 0.5 / Math.sqrt(3);

    private final double[] charges;
    private final double[] volts;
    private final double[] slopes;

    private RestVoltageCurve(double[] charges, double[] volts) {
        this.charges = charges;
        this.volts = volts;
        this.slopes = slopes(charges, volts);
    }

    /**
     * The curve through the given points.
     *
     * @param charges charge of each point, strictly rising, at least three
     * @param volts rest voltage of each point (V), strictly rising, as many as charges
     */
    public static RestVoltageCurve through(double[] charges, double[] volts) {
        if (charges.length != volts.length || charges.length < 3) {
            throw new IllegalArgumentException("a curve needs three points or more, in pairs");
        }
        for (int i = 0; i < charges.length; i++) {
            Require.finite(charges[i], "charge");
            Require.finite(volts[i], "volts");
            if (i > 0 && (charges[i] <= charges[i - 1] || volts[i] <= volts[i - 1])) {
                throw new IllegalArgumentException("points must rise; number " + i + " does not");
            }
        }
        return new RestVoltageCurve(charges.clone(), volts.clone());
    }

    /** Rest voltage (V) at this charge; any finite charge has one. */
    public double voltsAt(double charge) {
        int last = charges.length - 1;
        if (charge <= charges[0]) {
            return volts[0];
        }
        if (charge >= charges[last]) {
            return volts[last] + slopes[last] * (charge - charges[last]);
        }
        int i = segment(charges, charge);
        return hermite(i, (charge - charges[i]) / (charges[i + 1] - charges[i]));
    }

    /**
     * Slope of the curve (V per unit of charge) at this charge: 0 below the first point, above zero
     * everywhere else but possibly at single charges.
     */
    public double slope(double charge) {
        int last = charges.length - 1;
        if (charge < charges[0]) {
            return 0;
        }
        if (charge >= charges[last]) {
            return slopes[last];
        }
        int i = segment(charges, charge);
        double width = charges[i + 1] - charges[i];
        return hermiteSlope(i, (charge - charges[i]) / width) / width;
    }

    /** Least charge there is: with it nothing is left that a cell could give. */
    public double leastCharge() {
        return charges[0];
    }

    /**
     * Charge at which the cell rests at this voltage (V): the inverse of {@link #voltsAt}, and
     * {@link #leastCharge} below the first point.
     */
    public double chargeAt(double restV) {
        int last = charges.length - 1;
        if (restV <= volts[0]) {
            return charges[0];
        }
        if (restV >= volts[last]) {
            return charges[last] + (restV - volts[last]) / slopes[last];
        }
        int i = segment(volts, restV);
        if (restV == volts[i]) {
            return charges[i];
        }
        return charges[i] + solve(i, restV) * (charges[i + 1] - charges[i]);
    }

    /** Mean rest voltage (V) from empty to full: what a unit of charge brings on the whole. */
    public double meanV() {
        double sum = 0;
        for (int i = 0; i < charges.length - 1; i++) {
            double from = Math.max(charges[i], 0);
            double to = Math.min(charges[i + 1], 1);
            if (to > from) {
                // Simpson's rule is exact for a cubic.
                double ends = voltsAt(from) + voltsAt(to);
                sum += (to - from) * (ends + 4 * voltsAt(0.5 * (from + to))) / 6;
            }
        }
        return sum;
    }

    /**
     * Mean rest voltage (V) between two charges, exact for this curve: what a unit of charge brings
     * or takes on the way from one to the other.
     */
    public double meanV(double from, double to) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        int next = pointAbove(low);
        if (next == charges.length || charges[next] >= high) {
            return gauss(next, low, high);
        }
        double sum = 0;
        for (double at = low; at < high; next++) {
            double end = next == charges.length ? high : Math.min(high, charges[next]);
            sum += (end - at) * gauss(next, at, end);
            at = end;
        }
        return sum / (high - low);
    }

    private int pointAbove(double charge) {
        int found = Arrays.binarySearch(charges, charge);
        return found >= 0 ? found + 1 : -found - 1;
    }

    /** Mean over the piece of the curve before a point: Gauss's rule with two points is exact for a cubic. */
    private double gauss(int next, double from, double to) {
        double middle = 0.5 * (from + to);
        double reach = GAUSS_POINT * (to - from);
        if (next == 0 || next == charges.length) {
            return 0.5 * (voltsAt(middle - reach) + voltsAt(middle + reach));
        }
        int i = next - 1;
        double width = charges[next] - charges[i];
        return 0.5
                * (hermite(i, (middle - reach - charges[i]) / width)
                        + hermite(i, (middle + reach - charges[i]) / width));
    }

    /**
     * The same curve for a cell that is full at another voltage, so that it passes through {@code
     * fullV} at charge 1. Where that lies well above the voltage at half charge, only what lies
     * above half charge is stretched or squeezed, as for a cell of the same kind whose charge ends
     * later or earlier. Otherwise everything above 0 V shrinks in proportion, as for a cell of
     * another make altogether. What lies above full moves along. A teaching simplification.
     *
     * @param fullV rest voltage of the full cell (V), above 0
     */
    public RestVoltageCurve withFull(double fullV) {
        Require.positive(fullV, "fullV");
        double usualFullV = voltsAt(1.0);
        if (fullV == usualFullV) {
            return this;
        }
        double halfV = voltsAt(0.5);
        boolean sameKind = fullV >= halfV + LEAST_UPPER_HALF_V;
        double fromV = sameKind ? halfV : 0;
        double stretch = (fullV - fromV) / (usualFullV - fromV);
        double[] moved = volts.clone();
        for (int i = 0; i < moved.length; i++) {
            if (charges[i] == 1.0) {
                moved[i] = fullV;
            } else if (charges[i] > 1.0) {
                moved[i] = fullV + (volts[i] - usualFullV);
            } else if (volts[i] > fromV) {
                moved[i] = fromV + stretch * (volts[i] - fromV);
            }
        }
        return new RestVoltageCurve(charges, moved);
    }

    /** Index of the segment of a rising table in which {@code value} lies, lower end included. */
    private static int segment(double[] table, double value) {
        int found = Arrays.binarySearch(table, value);
        int lower = found >= 0 ? found : -found - 2;
        return Math.min(lower, table.length - 2);
    }

    /** Volts within segment {@code i} at the share {@code t} (0–1) of its width. */
    private double hermite(int i, double t) {
        double width = charges[i + 1] - charges[i];
        double rise = volts[i + 1] - volts[i];
        double first = width * slopes[i];
        double second = width * slopes[i + 1];
        double bend = 3 * rise - 2 * first - second;
        double twist = first + second - 2 * rise;
        return volts[i] + t * (first + t * (bend + t * twist));
    }

    /** Derivative of {@link #hermite} by {@code t}. */
    private double hermiteSlope(int i, double t) {
        double width = charges[i + 1] - charges[i];
        double rise = volts[i + 1] - volts[i];
        double first = width * slopes[i];
        double second = width * slopes[i + 1];
        return first + t * (2 * (3 * rise - 2 * first - second) + t * 3 * (first + second - 2 * rise));
    }

    /**
     * Share of segment {@code i} at which its cubic reaches {@code restV}: Newton steps kept inside
     * a shrinking bracket, so it always ends and is as exact as the numbers allow.
     */
    private double solve(int i, double restV) {
        double low = 0;
        double high = 1;
        double t = (restV - volts[i]) / (volts[i + 1] - volts[i]);
        for (int step = 0; step < 200 && high - low > Math.ulp(high); step++) {
            double error = hermite(i, t) - restV;
            if (error == 0) {
                return t;
            }
            if (error < 0) {
                low = t;
            } else {
                high = t;
            }
            double newton = t - error / hermiteSlope(i, t);
            double next = newton > low && newton < high ? newton : 0.5 * (low + high);
            if (Math.abs(next - t) <= 0.5 * Math.ulp(t)) {
                return next;
            }
            t = next;
        }
        return t;
    }

    private static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] width = new double[n - 1];
        double[] secant = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            width[i] = x[i + 1] - x[i];
            secant[i] = (y[i + 1] - y[i]) / width[i];
        }
        double[] slope = new double[n];
        for (int i = 1; i < n - 1; i++) {
            double before = 2 * width[i] + width[i - 1];
            double after = width[i] + 2 * width[i - 1];
            slope[i] = (before + after) / (before / secant[i - 1] + after / secant[i]);
        }
        slope[0] = secant[0];
        slope[n - 1] = secant[n - 2];
        return slope;
    }
}
