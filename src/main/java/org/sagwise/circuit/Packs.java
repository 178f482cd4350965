package org.sagwise.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Gathers the sources of a circuit into packs and finds the loops in each: a spanning tree by
 * breadth first, so that loops are short, and one loop for every source outside the tree.
 */
final class Packs {

    private final List<Branch> sources;
    private final List<List<Branch>> atNet = new ArrayList<>();
    private final Branch[] up;
    private final int[] depth;
    private final boolean[] seen;

    private Packs(Netlist circuit) {
        sources = circuit.sources();
        up = new Branch[circuit.size()];
        depth = new int[circuit.size()];
        seen = new boolean[circuit.size()];
        for (int net = 0; net < circuit.size(); net++) {
            atNet.add(new ArrayList<>(2));
        }
        for (Branch source : sources) {
            atNet.get(source.from()).add(source);
            if (!source.isShorted()) {
                atNet.get(source.to()).add(source);
            }
        }
    }

    static List<Pack> of(Netlist circuit) {
        Packs packs = new Packs(circuit);
        List<Pack> found = new ArrayList<>();
        for (Branch source : packs.sources) {
            if (!packs.seen[source.from()]) {
                found.add(packs.from(source.from()));
            }
        }
        return Collections.unmodifiableList(found);
    }

    private Pack from(int root) {
        Set<Branch> members = new LinkedHashSet<>();
        Set<Branch> tree = new LinkedHashSet<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(root));
        seen[root] = true;
        while (!open.isEmpty()) {
            int net = open.remove();
            for (Branch source : atNet.get(net)) {
                members.add(source);
                int next = source.across(net);
                if (!seen[next]) {
                    seen[next] = true;
                    up[next] = source;
                    depth[next] = depth[net] + 1;
                    tree.add(source);
                    open.add(next);
                }
            }
        }
        List<Branch> inFileOrder = sources.stream().filter(members::contains).toList();
        List<Loop> loops = inFileOrder.stream()
                .filter(s -> !tree.contains(s))
                .map(this::loop)
                .toList();
        return new Pack(inFileOrder, loops);
    }

    /** The loop that a source outside the tree closes: up through it and back along the tree. */
    private Loop loop(Branch closing) {
        List<Loop.Step> back = new ArrayList<>();
        List<Loop.Step> forth = new ArrayList<>();
        int a = closing.to();
        int b = closing.from();
        while (a != b) {
            if (depth[a] >= depth[b]) {
                back.add(step(up[a], a));
                a = up[a].across(a);
            } else {
                int parent = up[b].across(b);
                forth.add(step(up[b], parent));
                b = parent;
            }
        }
        Collections.reverse(forth);
        List<Loop.Step> steps = new ArrayList<>(List.of(new Loop.Step(closing, 1)));
        steps.addAll(back);
        steps.addAll(forth);
        return new Loop(steps);
    }

    private static Loop.Step step(Branch source, int start) {
        return new Loop.Step(source, start == source.from() ? 1 : -1);
    }
}
