package org.sagwise.network;

/**
 * Cholesky factors of a matrix that is filled, factorised and solved over and over in the same
 * arrays. Only the lower half and the diagonal are used. What is zero before the first entry of a row
 * stays zero in the factors, and is passed over: loops that share nothing cost next to nothing.
 */
final class LoopFactors {

    /** A pivot below this part of its diagonal means a loop without resistance. */
    private static final double SINGULAR = 1e-13;

    /** The matrix to factorise; afterwards its factors. */
    final double[][] rows;

    /** Where each row begins to differ from zero. */
    private final int[] first;

    LoopFactors(int size) {
        rows = new double[size][size];
        first = new int[size];
    }

    /** Factorises in place; false if the matrix is not positive definite. */
    boolean factorise() {
        findFirst();
        for (int j = 0; j < rows.length; j++) {
            double[] row = rows[j];
            double pivot = row[j];
            double least = SINGULAR * pivot;
            for (int k = first[j]; k < j; k++) {
                pivot -= row[k] * row[k];
            }
            if (!(pivot > least)) {
                return false;
            }
            row[j] = Math.sqrt(pivot);
            eliminate(j);
        }
        return true;
    }

    private void findFirst() {
        for (int i = 0; i < rows.length; i++) {
            int k = 0;
            while (k < i && rows[i][k] == 0) {
                k++;
            }
            first[i] = k;
        }
    }

    private void eliminate(int j) {
        double[] pivotRow = rows[j];
        for (int i = j + 1; i < rows.length; i++) {
            if (first[i] > j) {
                continue;
            }
            double[] row = rows[i];
            double sum = row[j];
            for (int k = Math.max(first[i], first[j]); k < j; k++) {
                sum -= row[k] * pivotRow[k];
            }
            row[j] = sum / pivotRow[j];
        }
    }

    /** Replaces the right-hand side by the solution. */
    void solve(double[] right) {
        for (int i = 0; i < rows.length; i++) {
            double sum = right[i];
            for (int k = first[i]; k < i; k++) {
                sum -= rows[i][k] * right[k];
            }
            right[i] = sum / rows[i][i];
        }
        for (int i = rows.length - 1; i >= 0; i--) {
            double sum = right[i];
            for (int k = i + 1; k < rows.length; k++) {
                if (first[k] <= i) {
                    sum -= rows[k][i] * right[k];
                }
            }
            right[i] = sum / rows[i][i];
        }
    }
}
