package org.sagwise.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Nets;

/**
 * Cells as plates of equally many in a row, found in a bench.
 *
 * @param rows plates from the pack's plus to its minus, cells of each in file order
 * @param turned ids of cells that stand the other way round
 * @param guards reverse guards that sit behind a cell, by its id
 */
record PackShape(List<List<String>> rows, Set<String> turned, Map<String, String> guards) {

    /** Where each cell lies: the nets at its plus and its minus. */
    private record Ends(String cell, int plus, int minus) {
        int other(int net) {
            return net == plus ? minus : plus;
        }

        boolean at(int net) {
            return net == plus || net == minus;
        }
    }

    int side() {
        return rows.get(0).size();
    }

    /** Ids of the cells in the order in which a line counts them. */
    List<String> cells() {
        return rows.stream().flatMap(List::stream).toList();
    }

    /** Every way of seeing the cells so, the likeliest first: a row can be read from either end. */
    static List<PackShape> of(Scenario bench, Nets nets) {
        Map<String, String> guards = guards(bench, nets);
        List<Ends> cells = new ArrayList<>();
        for (Part cell : bench.partsOf(PartKind.CELL)) {
            cells.add(new Ends(
                    cell.id(),
                    end(cell.terminal("+"), guards, nets, bench),
                    end(cell.terminal("-"), guards, nets, bench)));
        }
        Set<Integer> all = new LinkedHashSet<>();
        cells.forEach(cell -> {
            all.add(cell.plus());
            all.add(cell.minus());
        });
        List<PackShape> found = new ArrayList<>();
        for (int start : all) {
            walked(cells, start, guards).ifPresent(found::add);
        }
        return found.stream()
                .filter(shape ->
                        shape.cells().size() == bench.partsOf(PartKind.CELL).size())
                .sorted(Comparator.comparingInt(shape -> turnedness(shape, bench)))
                .toList();
    }

    /** Fewer turned cells are likelier meant; of as many the first one stands upright. */
    private static int turnedness(PackShape shape, Scenario bench) {
        String first = bench.partsOf(PartKind.CELL).get(0).id();
        return 2 * shape.turned().size() + (shape.turned().contains(first) ? 1 : 0);
    }

    /** Guards whose input touches nothing but one end of a cell, by the cell. */
    private static Map<String, String> guards(Scenario bench, Nets nets) {
        Map<String, String> guards = new LinkedHashMap<>();
        for (Part guard : bench.partsOf(PartKind.REVERSE_GUARD)) {
            List<TerminalRef> there = nets.members(nets.of(guard.terminal("in"))).stream()
                    .filter(end -> !end.part().equals(guard.id()))
                    .toList();
            if (there.size() == 1
                    && touches(bench, guard.terminal("in"), there.get(0))
                    && bench.part(there.get(0).part())
                            .filter(part -> part.kind() == PartKind.CELL)
                            .isPresent()) {
                guards.put(there.get(0).part(), guard.id());
            }
        }
        boolean each = guards.size() == bench.partsOf(PartKind.CELL).size() && guards.size() > 1
                || guards.size() == 1
                        && bench.partsOf(PartKind.CELL).size() == 1
                        && bench.partsOf(PartKind.REVERSE_GUARD).size() == 1;
        return each ? guards : Map.of();
    }

    /** A guard at a wire lies in line with the whole pack; so does one without any joint, at a single cell. */
    private static boolean touches(Scenario bench, TerminalRef one, TerminalRef other) {
        boolean several = bench.partsOf(PartKind.CELL).size() > 1;
        return bench.links().stream()
                .filter(link -> link.joins(one, other))
                .map(Link::joint)
                .anyMatch(joint -> joint instanceof Joint.Touch || several && joint instanceof Joint.Ideal);
    }

    /** The net of a cell's end, behind its guard if that sits there. */
    private static int end(TerminalRef end, Map<String, String> guards, Nets nets, Scenario bench) {
        String guard = guards.get(end.part());
        if (guard == null) {
            return nets.of(end);
        }
        Part part = bench.part(guard).orElseThrow();
        return nets.of(part.terminal("in")) == nets.of(end) ? nets.of(part.terminal("out")) : nets.of(end);
    }

    /** Plate by plate from one net; empty if the cells do not lie so. */
    private static Optional<PackShape> walked(List<Ends> cells, int start, Map<String, String> guards) {
        List<Ends> left = new ArrayList<>(cells);
        List<List<String>> rows = new ArrayList<>();
        Set<String> turned = new LinkedHashSet<>();
        int net = start;
        while (!left.isEmpty()) {
            int here = net;
            List<Ends> row = left.stream().filter(cell -> cell.at(here)).toList();
            if (row.isEmpty()
                    || row.stream().anyMatch(cell -> cell.plus() == cell.minus())
                    || row.stream().map(cell -> cell.other(here)).distinct().count() > 1
                    || !rows.isEmpty() && row.size() != rows.get(0).size()) {
                return Optional.empty();
            }
            row.stream().filter(cell -> cell.plus() != here).forEach(cell -> turned.add(cell.cell()));
            rows.add(row.stream().map(Ends::cell).toList());
            left.removeAll(row);
            net = row.get(0).other(here);
            int far = net;
            if (left.stream().anyMatch(cell -> cell.at(here) && !cell.at(far))) {
                return Optional.empty();
            }
        }
        return Optional.of(new PackShape(rows, turned, guards));
    }
}
