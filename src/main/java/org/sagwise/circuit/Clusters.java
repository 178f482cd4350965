package org.sagwise.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.sagwise.scenario.net.Groups;

/**
 * Nets of a circuit gathered where sources, or loads that carry current, already join them. What
 * lies between two clusters carries nothing: idle loads and gaps.
 */
final class Clusters {

    private final Netlist circuit;
    private final Groups groups;
    private final boolean[] driven;
    private final Map<Integer, List<Branch>> idleAt = new HashMap<>();

    Clusters(Netlist circuit, Predicate<Branch> isIdle) {
        this.circuit = circuit;
        groups = new Groups(circuit.size());
        driven = new boolean[circuit.size()];
        circuit.sources().forEach(this::join);
        circuit.outputs().forEach(this::join);
        for (Branch load : circuit.loads()) {
            if (!isIdle.test(load)) {
                join(load);
            }
        }
        circuit.sources().forEach(source -> driven[of(source.from())] = true);
        for (Branch load : circuit.loads()) {
            if (of(load.from()) != of(load.to())) {
                idleAt.computeIfAbsent(of(load.from()), c -> new ArrayList<>()).add(load);
                idleAt.computeIfAbsent(of(load.to()), c -> new ArrayList<>()).add(load);
            }
        }
    }

    private void join(Branch branch) {
        groups.join(branch.from(), branch.to());
    }

    /** The cluster of a net: one of its nets stands for it. */
    int of(int net) {
        return groups.of(net);
    }

    /** Whether sources lie in a cluster. */
    boolean isDriven(int cluster) {
        return driven[cluster];
    }

    List<Branch> idleAt(int cluster) {
        return idleAt.getOrDefault(cluster, List.of());
    }

    int across(Branch load, int cluster) {
        return of(load.from()) == cluster ? of(load.to()) : of(load.from());
    }

    /**
     * Every cluster that idle loads lead to from one, without passing a load or those beside it.
     */
    Set<Integer> side(int start, Branch without) {
        Set<Integer> clusters = new HashSet<>(Set.of(start));
        Deque<Integer> open = new ArrayDeque<>(clusters);
        while (!open.isEmpty()) {
            int cluster = open.remove();
            for (Branch load : idleAt(cluster)) {
                int next = across(load, cluster);
                if (!areBeside(load, without) && clusters.add(next)) {
                    open.add(next);
                }
            }
        }
        return clusters;
    }

    boolean areBeside(Branch load, Branch other) {
        int from = of(load.from());
        int to = of(load.to());
        int otherFrom = of(other.from());
        int otherTo = of(other.to());
        return (from == otherFrom && to == otherTo) || (from == otherTo && to == otherFrom);
    }

    /** The nets of some clusters, in order. */
    List<Integer> nets(Set<Integer> clusters) {
        List<Integer> nets = new ArrayList<>();
        for (int net = 0; net < circuit.size(); net++) {
            if (clusters.contains(of(net))) {
                nets.add(net);
            }
        }
        return nets;
    }
}
