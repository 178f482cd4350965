package org.sagwise.network;

import java.util.List;

/** The loop equations with loop currents as unknowns: the matrix of resistances loops share. */
final class LoopMatrix implements LoopEquations {
    private final ScaledCholesky factors;

    LoopMatrix(List<Loop> loops, BranchUse use, double[] ohm) {
        int size = loops.size();
        double[][] shared = new double[size][size];
        for (int i = 0; i < size; i++) {
            shared[i][i] = ohm[loops.get(i).chord];
        }
        use.addShared(ohm, shared);
        factors = new ScaledCholesky(shared);
    }

    @Override
    public double[] circulating(double[] excessV) {
        return factors.solve(excessV);
    }
}
