package org.sagwise.network;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.MatrixUtils;

import java.util.List;

/**
 * The equations of a set of loops: how much current must circulate in each for the voltages round
 * every one of them to add up to zero. The matrix of shared resistances is symmetric positive
 * definite; it is scaled to a unit diagonal and factorised once.
 */
final class LoopSystem {
    private final List<Loop> loops;
    private final double[] ohm;
    private final double[] scale;
    private final DecompositionSolver solver;

    /**
     * @param loops loops whose chords have a resistance above 0
     * @param ohm resistance of every branch (Ω)
     */
    LoopSystem(List<Loop> loops, double[] ohm) {
        this.loops = loops;
        this.ohm = ohm;
        int size = loops.size();
        scale = new double[size];
        solver = size == 0 ? null : factorise(sharedOhm());
    }

    private double[][] sharedOhm() {
        int size = loops.size();
        double[][] shared = new double[size][size];
        for (int i = 0; i < size; i++) {
            shared[i][i] = ohm[loops.get(i).chord];
        }
        new BranchUse(loops, ohm).addShared(shared);
        return shared;
    }

    private DecompositionSolver factorise(double[][] matrix) {
        int size = matrix.length;
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
        return new CholeskyDecomposition(MatrixUtils.createRealMatrix(matrix)).getSolver();
    }

    /** Circulates what is still missing in each loop; a second call refines the first. */
    void balance(double[] emfV, double[] currentA) {
        int size = loops.size();
        if (size == 0) {
            return;
        }
        double[] excess = new double[size];
        for (int i = 0; i < size; i++) {
            excess[i] = scale[i] * loops.get(i).excessV(emfV, ohm, currentA);
        }
        double[] missing = solver.solve(new ArrayRealVector(excess, false)).toArray();
        for (int i = 0; i < size; i++) {
            loops.get(i).circulate(scale[i] * missing[i], currentA);
        }
    }
}
