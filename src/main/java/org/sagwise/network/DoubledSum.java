package org.sagwise.network;

/** A running sum of numbers and products that keeps what rounding cuts off. */
final class DoubledSum {
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
        low += Math.fma(a, b, -product);
        add(product);
    }

    double value() {
        return high + low;
    }
}
