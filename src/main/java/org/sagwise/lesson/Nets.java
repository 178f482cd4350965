package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Which terminals links join, whatever the picture looks like: the layout as current sees it. */
final class Nets {

    private final Map<TerminalRef, TerminalRef> leader = new HashMap<>();
    private final List<Part> cells;

    private Nets(List<Part> cells) {
        this.cells = cells;
    }

    static Nets of(Scenario scenario) {
        Set<String> linked = new HashSet<>();
        for (Link link : scenario.links()) {
            linked.add(link.from().part());
            linked.add(link.to().part());
        }
        Nets nets = new Nets(scenario.partsOf(PartKind.CELL).stream()
                .filter(cell -> linked.contains(cell.id()))
                .toList());
        for (Link link : scenario.links()) {
            nets.leader.put(nets.find(link.from()), nets.find(link.to()));
        }
        return nets;
    }

    boolean joined(TerminalRef a, TerminalRef b) {
        return find(a).equals(find(b));
    }

    /** How many of so many cells side by side stand against the rest; -1 if they do not. */
    int turnedSideBySide(int count) {
        if (cells.size() != count || count < 2) {
            return -1;
        }
        TerminalRef top = plus(cells.get(0));
        TerminalRef bottom = minus(cells.get(0));
        int turned = 0;
        for (Part cell : cells) {
            boolean upright = plus(cell).equals(top) && minus(cell).equals(bottom);
            boolean against = plus(cell).equals(bottom) && minus(cell).equals(top);
            if (top.equals(bottom) || !(upright || against)) {
                return -1;
            }
            turned += against ? 1 : 0;
        }
        return Math.min(turned, count - turned);
    }

    /** How many of so many cells in one row stand against the rest; -1 if they are no row. */
    int turnedInRow(int count) {
        if (cells.size() != count || count < 2) {
            return -1;
        }
        for (Part first : cells) {
            for (TerminalRef end : List.of(plus(first), minus(first))) {
                int turned = walk(end);
                if (turned >= 0) {
                    return Math.min(turned, count - turned);
                }
            }
        }
        return -1;
    }

    /** Walks from one end through cells that meet two by two; counts those passed from plus. */
    private int walk(TerminalRef end) {
        List<Part> left = new ArrayList<>(cells);
        Set<TerminalRef> seen = new HashSet<>(Set.of(end));
        TerminalRef at = end;
        int fromPlus = 0;
        while (!left.isEmpty()) {
            TerminalRef here = at;
            List<Part> next = left.stream().filter(cell -> touches(cell, here)).toList();
            if (next.size() != 1) {
                return -1;
            }
            Part cell = next.get(0);
            boolean plusFirst = plus(cell).equals(here);
            fromPlus += plusFirst ? 1 : 0;
            at = plusFirst ? minus(cell) : plus(cell);
            left.remove(cell);
            if (!seen.add(at)) {
                return -1;
            }
        }
        return fromPlus;
    }

    private boolean touches(Part cell, TerminalRef net) {
        return plus(cell).equals(net) || minus(cell).equals(net);
    }

    private TerminalRef plus(Part cell) {
        return find(cell.terminal("+"));
    }

    private TerminalRef minus(Part cell) {
        return find(cell.terminal("-"));
    }

    private TerminalRef find(TerminalRef terminal) {
        TerminalRef at = terminal;
        while (leader.containsKey(at) && !leader.get(at).equals(at)) {
            at = leader.get(at);
        }
        return at;
    }
}
