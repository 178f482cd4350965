package org.sagwise.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;

/** Finds the rows (sources in series) of a circuit. */
public final class Rows {

    private final IntPredicate isLoaded;
    private final List<List<Branch>> groups;
    private final Map<Integer, List<List<Branch>>> atNet = new LinkedHashMap<>();
    private final Set<List<Branch>> used = Collections.newSetFromMap(new IdentityHashMap<>());

    private Rows(List<Branch> sources, IntPredicate isLoaded) {
        this.isLoaded = isLoaded;
        groups = groups(sources);
        for (List<Branch> group : groups) {
            Branch first = group.get(0);
            atNet.computeIfAbsent(first.from(), net -> new ArrayList<>()).add(group);
            atNet.computeIfAbsent(first.to(), net -> new ArrayList<>()).add(group);
        }
    }

    /** Every row of two groups or more. */
    public static List<Row> of(Netlist circuit) {
        return of(circuit.sources(), circuit::isLoaded);
    }

    /**
     * Every row of two groups or more among some sources.
     *
     * @param isLoaded whether something hangs at a net, so that no row leads through it
     */
    public static List<Row> of(List<Branch> sources, IntPredicate isLoaded) {
        return new Rows(sources, isLoaded).find();
    }

    /** Sources side by side between the same two nets; sources with joined ends are left out. */
    public static List<List<Branch>> groups(List<Branch> sources) {
        Map<List<Integer>, List<Branch>> byNets = new LinkedHashMap<>();
        for (Branch source : sources) {
            if (!source.isShorted()) {
                List<Integer> nets =
                        List.of(Math.min(source.from(), source.to()), Math.max(source.from(), source.to()));
                byNets.computeIfAbsent(nets, key -> new ArrayList<>()).add(source);
            }
        }
        return List.copyOf(byNets.values());
    }

    private List<Row> find() {
        List<Row> rows = new ArrayList<>();
        for (List<Branch> group : groups) {
            if (used.add(group)) {
                List<Row.Group> row = new ArrayList<>();
                walk(group, group.get(0).from(), -1, row);
                Collections.reverse(row);
                row.add(new Row.Group(group, 1));
                walk(group, group.get(0).to(), 1, row);
                if (row.size() > 1) {
                    rows.add(new Row(row));
                }
            }
        }
        return rows;
    }

    /** Adds the groups that follow on one side; {@code direction} is -1 when walking backwards. */
    private void walk(List<Branch> start, int startNet, int direction, List<Row.Group> row) {
        List<Branch> group = start;
        int net = startNet;
        while (isJoint(net)) {
            List<List<Branch>> here = atNet.get(net);
            group = here.get(0) == group ? here.get(1) : here.get(0);
            if (!used.add(group)) {
                return;
            }
            Branch first = group.get(0);
            row.add(new Row.Group(group, first.from() == net ? direction : -direction));
            net = first.across(net);
        }
    }

    private boolean isJoint(int net) {
        return atNet.get(net).size() == 2 && !isLoaded.test(net);
    }
}
