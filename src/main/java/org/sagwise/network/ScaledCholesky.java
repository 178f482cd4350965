package org.sagwise.network;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;

/**
 * Cholesky factors of a symmetric positive definite matrix scaled to a unit diagonal; may be empty.
 */
final class ScaledCholesky {
    private final double[] scale;
    private final DecompositionSolver solver;

    /**
     * @param matrix its lower half and diagonal are read; all of it is overwritten
     */
    ScaledCholesky(double[][] matrix) {
        int size = matrix.length;
        scale = new double[size];
        for (int i = 0; i < size; i++) {
            scale[i] = 1 / Math.sqrt(matrix[i][i]);
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                matrix[i][j] *= scale[i] * scale[j];
                matrix[j][i] = matrix[i][j];
            }
            matrix[i][i] = 1;
        }
        solver = size == 0 ? null : factorise(matrix);
    }

    private static DecompositionSolver factorise(double[][] matrix) {
        return new CholeskyDecomposition(new Array2DRowRealMatrix(matrix, false)).getSolver();
    }

    int size() {
        return scale.length;
    }

    double[] solve(double[] right) {
        if (solver == null) {
            return new double[0];
        }
        double[] unknown = new double[right.length];
        for (int i = 0; i < unknown.length; i++) {
            unknown[i] = scale[i] * right[i];
        }
        unknown = solver.solve(new ArrayRealVector(unknown, false)).toArray();
        for (int i = 0; i < unknown.length; i++) {
            unknown[i] *= scale[i];
        }
        return unknown;
    }
}
