package org.sagwise.plan.pairing;

import java.util.ArrayList;
import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.blossom.v5.KolmogorovWeightedPerfectMatching;
import org.jgrapht.alg.matching.blossom.v5.ObjectiveSense;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * Pairs at the least cost in all: a perfect matching of minimum weight (Kolmogorov, Blossom V, Math.
 * Prog. Comp. 1 (2009) 43–67). Of an odd number one cell is matched with nothing, for nothing.
 */
final class PairMatching {

    private PairMatching() {}

    /** The order in which each two cells make a pair, and one that is left over comes last. */
    static int[] best(PartitionCost cost) {
        int cells = cost.cells();
        int nobody = cells % 2 == 0 ? -1 : cells;
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        for (int cell = 0; cell < cells + cells % 2; cell++) {
            graph.addVertex(cell);
            for (int other = 0; other < cell; other++) {
                double weight = cell == nobody ? 0 : cost.of(new int[] {other, cell}, 0);
                graph.setEdgeWeight(graph.addEdge(other, cell), weight);
            }
        }
        List<Integer> order = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        for (DefaultWeightedEdge pair : new KolmogorovWeightedPerfectMatching<>(graph, ObjectiveSense.MINIMIZE)
                .getMatching()
                .getEdges()) {
            int one = graph.getEdgeSource(pair);
            int other = graph.getEdgeTarget(pair);
            if (one == nobody || other == nobody) {
                left.add(one == nobody ? other : one);
            } else {
                order.add(one);
                order.add(other);
            }
        }
        order.addAll(left);
        return order.stream().mapToInt(Integer::intValue).toArray();
    }
}
