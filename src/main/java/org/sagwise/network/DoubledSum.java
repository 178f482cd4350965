package org.sagwise.network;

/** A running sum of numbers and products that keeps what rounding cuts off. */
final class DoubledSum {

    private static final double SPLITTER = (1 << 27) + 1;

    private double high;
    private double low;

    void add(double term) {
        double sum = high + term;
        double part = sum - high;
        low += (high - (sum - part)) + (term - part);
        high = sum;
    }

    void addProduct(double a, double b) {
        double product = a * b;
        low += lost(a, b, product);
        add(product);
    }

    /**
     * What rounding cut off a product: T. J. Dekker, A floating-point technique for extending the available precision,
     * Numerische Mathematik 18 (1971) 224–242. The same number as a fused multiply-add gives, which a browser does not
     * have, as long as neither factor is beyond 1e291 and what is cut off is no smaller than 1e-290.
     */
    private static double lost(double a, double b, double product) {
        double aHigh = upperHalf(a);
        double aLow = a - aHigh;
        double bHigh = upperHalf(b);
        double bLow = b - bHigh;
        return aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow);
    }

    /** The 26 leading bits of a number (G. W. Veltkamp). */
    private static double upperHalf(double a) {
        double scaled = SPLITTER * a;
        return scaled - (scaled - a);
    }

    double value() {
        return high + low;
    }
}
