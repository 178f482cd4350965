package org.sagwise.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * Potentials of a network of conductances for given currents into its nodes, by turning one star
 * after another into a mesh until no node is left (A. Rosen, "A new network theorem", Journal of
 * the Institution of Electrical Engineers 62 (1924) 916-918): elimination that never subtracts, so
 * that conductances of very different size do not spoil each other.
 *
 * <p>Nodes with fewest neighbours go first (minimum degree: W. F. Tinney and J. W. Walker,
 * Proceedings of the IEEE 55 (1967) 1801-1809). Ladders and rings, which packs of cells are, then
 * cost hardly more than their number of nodes.
 */
final class StarMesh {

    /** A node that was taken out, with what it was joined to at that moment. */
    private record Star(int node, int[] neighbours, double[] siemens, double totalSiemens) {}

    /** A node as it stood in the queue; an old entry is passed over. */
    private record Queued(int node, int degree) {}

    /** Neighbours of the node that has fewest, beyond which what is left is one tangle. */
    private static final int MOST_SPARSE = 64;

    private final int nodes;
    private final List<Star> stars = new ArrayList<>();

    private StarMesh(int nodes) {
        this.nodes = nodes;
    }

    /**
     * Takes a network apart.
     *
     * @param conductance siemens from each node to each neighbour, both ways; used up
     */
    static StarMesh of(List<Map<Integer, Double>> conductance) {
        StarMesh mesh = new StarMesh(conductance.size());
        PriorityQueue<Queued> queue = new PriorityQueue<>((a, b) -> {
            int byDegree = Integer.compare(a.degree(), b.degree());
            return byDegree != 0 ? byDegree : Integer.compare(a.node(), b.node());
        });
        for (int node = 0; node < conductance.size(); node++) {
            queue.add(new Queued(node, conductance.get(node).size()));
        }
        boolean[] gone = new boolean[conductance.size()];
        while (!queue.isEmpty()) {
            Queued next = queue.poll();
            if (!gone[next.node()]
                    && next.degree() == conductance.get(next.node()).size()) {
                if (next.degree() > MOST_SPARSE) {
                    mesh.takeOutAll(remaining(gone), conductance);
                    return mesh;
                }
                gone[next.node()] = true;
                mesh.takeOut(next.node(), conductance, queue);
            }
        }
        return mesh;
    }

    private static int[] remaining(boolean[] gone) {
        return IntStream.range(0, gone.length).filter(node -> !gone[node]).toArray();
    }

    /** Where every node has many neighbours, a square of numbers is quicker than lists of them. */
    private void takeOutAll(int[] tangle, List<Map<Integer, Double>> conductance) {
        double[][] square = new double[tangle.length][];
        for (int row = 0; row < tangle.length; row++) {
            square[row] = new double[row];
            for (int column = 0; column < row; column++) {
                square[row][column] = conductance.get(tangle[row]).getOrDefault(tangle[column], 0.0);
            }
        }
        for (int last = tangle.length - 1; last >= 0; last--) {
            double[] spokes = square[last];
            double total = Arrays.stream(spokes).sum();
            stars.add(star(tangle, spokes, total));
            for (int row = 0; row < last; row++) {
                double share = spokes[row] / total;
                for (int column = 0; column < row && share > 0; column++) {
                    square[row][column] += share * spokes[column];
                }
            }
        }
    }

    private static Star star(int[] tangle, double[] spokes, double total) {
        int[] places = IntStream.range(0, spokes.length)
                .filter(place -> spokes[place] > 0)
                .toArray();
        return new Star(
                tangle[spokes.length],
                Arrays.stream(places).map(place -> tangle[place]).toArray(),
                Arrays.stream(places).mapToDouble(place -> spokes[place]).toArray(),
                total);
    }

    private void takeOut(int node, List<Map<Integer, Double>> conductance, PriorityQueue<Queued> queue) {
        Map<Integer, Double> spokes = conductance.get(node);
        int[] neighbours =
                spokes.keySet().stream().mapToInt(Integer::intValue).sorted().toArray();
        double[] siemens = new double[neighbours.length];
        double total = 0;
        for (int k = 0; k < neighbours.length; k++) {
            siemens[k] = spokes.get(neighbours[k]);
            total += siemens[k];
        }
        stars.add(new Star(node, neighbours, siemens, total));
        for (int k = 0; k < neighbours.length; k++) {
            Map<Integer, Double> from = conductance.get(neighbours[k]);
            from.remove(node);
            for (int n = 0; n < k; n++) {
                double mesh = siemens[k] / total * siemens[n];
                from.merge(neighbours[n], mesh, Double::sum);
                conductance.get(neighbours[n]).merge(neighbours[k], mesh, Double::sum);
            }
        }
        for (int neighbour : neighbours) {
            queue.add(new Queued(neighbour, conductance.get(neighbour).size()));
        }
    }

    /**
     * Potentials (V) for currents into the nodes (A) that add up to zero in every connected part;
     * the node of each part that was taken out last stands at 0 V.
     */
    double[] potentials(double[] intoA) {
        double[] ampere = intoA.clone();
        for (Star star : stars) {
            for (int k = 0; k < star.neighbours().length; k++) {
                ampere[star.neighbours()[k]] += star.siemens()[k] / star.totalSiemens() * ampere[star.node()];
            }
        }
        double[] volt = new double[nodes];
        for (int s = stars.size() - 1; s >= 0; s--) {
            Star star = stars.get(s);
            double sum = star.neighbours().length == 0 ? 0 : ampere[star.node()];
            for (int k = 0; k < star.neighbours().length; k++) {
                sum += star.siemens()[k] * volt[star.neighbours()[k]];
            }
            volt[star.node()] = star.neighbours().length == 0 ? 0 : sum / star.totalSiemens();
        }
        return volt;
    }
}
