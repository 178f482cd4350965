package org.sagwise.plan.vary;

import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Which input of a model its variance comes from: first-order and total indices. Design and
 * estimators: A. Saltelli, P. Annoni, I. Azzini, F. Campolongo, M. Ratto, S. Tarantola,
 * "Variance based sensitivity analysis of model output. Design and estimator for the total
 * sensitivity index", Computer Physics Communications 181 (2010) 259–270, table 2, (b) for the
 * first order and (f), of Jansen, for the total; points of a Sobol' sequence, shifted at random.
 *
 * @param first share of the variance that each input causes by itself, about 0 to 1
 * @param total share in which each has a part, together with others, about 0 to 1
 */
record VarianceShares(double[] first, double[] total) {

    /**
     * Points of the unit cube for a model of so many inputs.
     *
     * @param a rows of inputs, 0 to 1, excluded
     * @param b as many others
     */
    record Design(double[][] a, double[][] b) {

        static Design of(int inputs, int rows, long seed) {
            SobolSequenceGenerator points = new SobolSequenceGenerator(2 * inputs);
            MersenneTwister chance = new MersenneTwister(seed);
            double[] shift = new double[2 * inputs];
            for (int i = 0; i < shift.length; i++) {
                shift[i] = chance.nextDouble();
            }
            double[][] a = new double[rows][inputs];
            double[][] b = new double[rows][inputs];
            for (int row = 0; row < rows; row++) {
                double[] point = points.nextVector();
                for (int i = 0; i < inputs; i++) {
                    a[row][i] = shifted(point[i], shift[i]);
                    b[row][i] = shifted(point[inputs + i], shift[inputs + i]);
                }
            }
            return new Design(a, b);
        }

        private static double shifted(double point, double by) {
            double sum = point + by;
            return Math.max(1e-9, Math.min(1 - 1e-9, sum - Math.floor(sum)));
        }

        /** A row of a, with one input of b. */
        double[] mixed(int row, int input) {
            double[] mixed = a[row].clone();
            mixed[input] = b[row][input];
            return mixed;
        }
    }

    /**
     * Indices from what the model says; rows with an answer that is no number are left out.
     *
     * @param ofA answers to the rows of a
     * @param ofB answers to those of b
     * @param ofMixed for each input the answers to the mixed rows
     */
    static VarianceShares of(double[] ofA, double[] ofB, double[][] ofMixed) {
        int inputs = ofMixed.length;
        double[] first = new double[inputs];
        double[] total = new double[inputs];
        double mean = 0;
        int count = 0;
        for (int row = 0; row < ofA.length; row++) {
            if (Double.isFinite(ofA[row] + ofB[row])) {
                mean += ofA[row] + ofB[row];
                count += 2;
            }
        }
        mean /= Math.max(1, count);
        double variance = 0;
        for (int row = 0; row < ofA.length; row++) {
            if (Double.isFinite(ofA[row] + ofB[row])) {
                variance += square(ofA[row] - mean) + square(ofB[row] - mean);
            }
        }
        variance /= Math.max(1, count);
        for (int i = 0; i < inputs; i++) {
            double alone = 0;
            double shared = 0;
            int rows = 0;
            for (int row = 0; row < ofA.length; row++) {
                double mixed = ofMixed[i][row];
                if (Double.isFinite(ofA[row] + ofB[row] + mixed)) {
                    // Around the mean, which changes nothing in expectation and scatters less.
                    alone += (ofB[row] - mean) * (mixed - ofA[row]);
                    shared += square(ofA[row] - mixed);
                    rows++;
                }
            }
            boolean isFlat = !(variance > 1e-24 * (1 + mean * mean)) || rows == 0;
            first[i] = isFlat ? 0 : alone / rows / variance;
            total[i] = isFlat ? 0 : shared / rows / 2 / variance;
        }
        return new VarianceShares(first, total);
    }

    private static double square(double value) {
        return value * value;
    }
}
