package org.sagwise.network;

import java.util.List;

/**
 * Why part of a network has no answer, or not a certain one. Unless said otherwise, the potentials
 * and currents of the island it concerns are unknown (NaN); other islands are solved all the same.
 */
public sealed interface Finding {

    /** Indices of the elements it concerns, in ascending order. */
    List<Integer> elements();

    /**
     * A loop of ideal sources (0 Ω) whose voltages do not add up to zero: no finite current
     * balances it.
     *
     * @param elements the sources in the loop, two or more
     * @param excessV by how much they disagree (V), positive
     */
    record ContradictingIdealSources(List<Integer> elements, double excessV) implements Finding {
        public ContradictingIdealSources {
            elements = elements.stream().sorted().toList();
        }
    }

    /**
     * An ideal source (0 Ω) whose two ends are one node, or are joined by ideal joints.
     *
     * @param element the source
     */
    record ShortedIdealSource(int element) implements Finding {
        @Override
        public List<Integer> elements() {
            return List.of(element);
        }
    }

    /**
     * A current source between two islands: its current has no way back.
     *
     * @param element the source
     */
    record NoReturnPath(int element) implements Finding {
        @Override
        public List<Integer> elements() {
            return List.of(element);
        }
    }

    /**
     * Chargers, converters or one-way elements that found no common state within the allowed number
     * of steps. The converters among them are stopped, the others left as they last stood, and the
     * network is solved so.
     *
     * @param elements the chargers, converters and one-way elements
     */
    record Unsettled(List<Integer> elements) implements Finding {
        public Unsettled {
            elements = elements.stream().sorted().toList();
        }
    }
}
