package org.sagwise.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The same loop equations with the potentials of the nodes as unknowns, for large networks: each
 * node meets few others, while a loop may run through half the network.
 */
final class NodeEquations implements LoopEquations {

    private final List<Loop> loops;
    private final double[] ohm;
    private final int[] from;
    private final int[] to;
    private final int nodeCount;
    private final DisjointSets joined;
    private final StarMesh mesh;

    NodeEquations(List<Loop> loops, double[] ohm, Branches branches) {
        this.loops = loops;
        this.ohm = ohm;
        this.from = branches.from;
        this.to = branches.to;
        nodeCount = branches.nodeCount;
        joined = new DisjointSets(nodeCount);
        boolean[] used = new boolean[ohm.length];
        for (Loop loop : loops) {
            used[loop.chord] = true;
            for (int branch : loop.path) {
                used[branch] = true;
                if (ohm[branch] == 0) {
                    joined.join(from[branch], to[branch]);
                }
            }
        }
        List<Map<Integer, Double>> conductance = new ArrayList<>();
        for (int node = 0; node < nodeCount; node++) {
            conductance.add(new HashMap<>());
        }
        for (int branch = 0; branch < ohm.length; branch++) {
            int a = joined.find(from[branch]);
            int b = joined.find(to[branch]);
            if (used[branch] && a != b) {
                conductance.get(a).merge(b, 1 / ohm[branch], Double::sum);
                conductance.get(b).merge(a, 1 / ohm[branch], Double::sum);
            }
        }
        mesh = StarMesh.of(conductance);
    }

    @Override
    public double[] circulating(double[] excessV) {
        double[] intoA = new double[nodeCount];
        for (int i = 0; i < excessV.length; i++) {
            int chord = loops.get(i).chord;
            double ampere = excessV[i] / ohm[chord];
            intoA[joined.find(to[chord])] += ampere;
            intoA[joined.find(from[chord])] -= ampere;
        }
        double[] volt = mesh.potentials(intoA);
        double[] ampere = new double[excessV.length];
        for (int i = 0; i < ampere.length; i++) {
            int chord = loops.get(i).chord;
            double riseV = volt[joined.find(to[chord])] - volt[joined.find(from[chord])];
            ampere[i] = (excessV[i] - riseV) / ohm[chord];
        }
        return ampere;
    }
}
