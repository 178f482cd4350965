package org.sagwise.network;

import java.util.List;

/**
 * The same loop equations with the voltages along the forest as unknowns, for networks with more
 * loops than forest. With the chords' resistances R, the forest's conductances G and the incidence
 * B of loops and forest, (R + B·G⁻¹·Bᵀ)⁻¹ = R⁻¹ − R⁻¹·B·(G + Bᵀ·R⁻¹·B)⁻¹·Bᵀ·R⁻¹ (the matrix
 * inversion lemma: M. A. Woodbury, "Inverting modified matrices", Princeton 1950).
 */
final class CutMatrix implements LoopEquations {
    private final List<Loop> loops;
    private final double[] ohm;
    private final int[] row;
    private final ScaledCholesky factors;

    CutMatrix(List<Loop> loops, BranchUse use, double[] ohm) {
        this.loops = loops;
        this.ohm = ohm;
        row = new int[ohm.length];
        int size = 0;
        for (int branch = 0; branch < row.length; branch++) {
            row[branch] = use.begin(branch) < use.end(branch) ? size++ : -1;
        }
        double[][] cut = new double[size][size];
        for (int branch = 0; branch < row.length; branch++) {
            if (row[branch] >= 0) {
                cut[row[branch]][row[branch]] = 1 / ohm[branch];
            }
        }
        loops.forEach(loop -> addChord(loop, cut));
        factors = new ScaledCholesky(cut);
    }

    private void addChord(Loop loop, double[][] cut) {
        for (int k = 0; k < loop.path.length; k++) {
            int i = row[loop.path[k]];
            double signedSiemens = loop.sign[k] / ohm[loop.chord];
            for (int n = 0; n < loop.path.length && i >= 0; n++) {
                int j = row[loop.path[n]];
                if (j >= 0 && j <= i) {
                    cut[i][j] += signedSiemens * loop.sign[n];
                }
            }
        }
    }

    @Override
    public double[] circulating(double[] excessV) {
        double[] ampere = new double[excessV.length];
        double[] cutA = new double[factors.size()];
        for (int c = 0; c < ampere.length; c++) {
            Loop loop = loops.get(c);
            ampere[c] = excessV[c] / ohm[loop.chord];
            for (int k = 0; k < loop.path.length; k++) {
                if (row[loop.path[k]] >= 0) {
                    cutA[row[loop.path[k]]] += loop.sign[k] * ampere[c];
                }
            }
        }
        double[] dropV = factors.solve(cutA);
        for (int c = 0; c < ampere.length; c++) {
            ampere[c] = (excessV[c] - alongPath(loops.get(c), dropV)) / ohm[loops.get(c).chord];
        }
        return ampere;
    }

    private double alongPath(Loop loop, double[] dropV) {
        double sum = 0;
        for (int k = 0; k < loop.path.length; k++) {
            sum += row[loop.path[k]] >= 0 ? loop.sign[k] * dropV[row[loop.path[k]]] : 0;
        }
        return sum;
    }
}
