package org.sagwise.network;

import java.util.List;

/**
 * Lets current circulate in a set of loops until the voltages round every one of them add up to
 * zero. Which loops share which resistances is worked out and factorised once.
 */
final class LoopSystem {

    /**
     * Unknowns from which on the nodes are cheaper than a full matrix; measured on ladders of cells
     * side by side.
     */
    private static final int LARGE = 120;

    private final List<Loop> loops;
    private final double[] ohm;
    private final LoopEquations equations;

    /**
     * @param loops loops whose chords have a resistance above 0
     * @param ohm resistance of every branch (Ω)
     * @param branches between which nodes they lie
     */
    LoopSystem(List<Loop> loops, double[] ohm, Branches branches) {
        this.loops = loops;
        this.ohm = ohm;
        BranchUse use = new BranchUse(loops, ohm);
        if (Math.min(use.branches(), loops.size()) > LARGE) {
            equations = new NodeEquations(loops, ohm, branches);
        } else if (use.branches() < loops.size()) {
            equations = new CutMatrix(loops, use, ohm);
        } else {
            equations = new LoopMatrix(loops, use, ohm);
        }
    }

    /** Circulates what is still missing in each loop; a second call refines the first. */
    void balance(double[] emfV, double[] currentA) {
        double[] excessV = new double[loops.size()];
        for (int i = 0; i < excessV.length; i++) {
            excessV[i] = loops.get(i).excessV(emfV, ohm, currentA);
        }
        double[] missingA = equations.circulating(excessV);
        for (int i = 0; i < missingA.length; i++) {
            loops.get(i).circulate(missingA[i], currentA);
        }
    }
}
