package org.sagwise.caution.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds the rows (sources in series) of a circuit. */
public final class Rows {

    private final Circuit circuit;
    private final List<List<Branch>> groups;
    private final Map<Integer, List<List<Branch>>> atNet = new LinkedHashMap<>();
    private final Set<List<Branch>> used = Collections.newSetFromMap(new IdentityHashMap<>());

    private Rows(Circuit circuit) {
        this.circuit = circuit;
        groups = groups(circuit);
        for (List<Branch> group : groups) {
            Branch first = group.get(0);
            atNet.computeIfAbsent(first.from(), net -> new ArrayList<>()).add(group);
            atNet.computeIfAbsent(first.to(), net -> new ArrayList<>()).add(group);
        }
    }

    /** Every row of two groups or more. */
    public static List<Row> of(Circuit circuit) {
        return new Rows(circuit).find();
    }

    /** Sources side by side between the same two nets; sources with joined ends are left out. */
    public static List<List<Branch>> groups(Circuit circuit) {
        Map<List<Integer>, List<Branch>> byNets = new LinkedHashMap<>();
        for (Branch source : circuit.sources()) {
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
        return atNet.get(net).size() == 2 && !circuit.isLoaded(net);
    }
}
