package org.sagwise.network;

import java.util.List;

/**
 * Elements between nodes 0 … {@code nodeCount - 1}. Immutable.
 *
 * @param nodeCount number of nodes, 0 or more; a node may touch no element
 * @param elements the elements; results refer to them by their index here
 * @param referencePreference nodes in order of preference: the reference (0 V) of each island is
 *     the first of these that lies in it. An island with none of them takes the minus end of its
 *     first source
 */
public record Network(int nodeCount, List<Element> elements, List<Integer> referencePreference) {

    /**
     * @throws IllegalArgumentException if {@code nodeCount} is negative or a node lies outside it
     */
    public Network {
        elements = List.copyOf(elements);
        referencePreference = List.copyOf(referencePreference);
        if (nodeCount < 0) {
            throw new IllegalArgumentException("nodeCount " + nodeCount + " is negative");
        }
        for (int i = 0; i < elements.size(); i++) {
            for (int node : elements.get(i).nodes()) {
                if (isOutside(node, nodeCount)) {
                    throw outside(node, nodeCount, "element " + i + " " + elements.get(i));
                }
            }
        }
        for (int node : referencePreference) {
            if (isOutside(node, nodeCount)) {
                throw outside(node, nodeCount, "the reference preference");
            }
        }
    }

    private static boolean isOutside(int node, int nodeCount) {
        return node < 0 || node >= nodeCount;
    }

    /** Worded only where it is thrown: a run makes networks by the thousand. */
    private static IllegalArgumentException outside(int node, int nodeCount, String where) {
        return new IllegalArgumentException("node " + node + " in " + where + " is not one of 0 to " + (nodeCount - 1));
    }
}
