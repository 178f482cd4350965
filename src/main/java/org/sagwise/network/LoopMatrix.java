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
        for (int branch = 0; branch < ohm.length; branch++) {
            for (int s = use.begin(branch); s < use.end(branch); s++) {
                double signedOhm = use.sign(s) * ohm[branch];
                double[] row = shared[use.loop(s)];
                for (int t = use.begin(branch); t <= s; t++) {
                    row[use.loop(t)] += signedOhm * use.sign(t);
                }
            }
        }
        factors = new ScaledCholesky(shared);
    }

    @Override
    public double[] circulating(double[] excessV) {
        return factors.solve(excessV);
    }
}
