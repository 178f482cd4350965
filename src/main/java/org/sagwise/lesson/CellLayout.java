package org.sagwise.lesson;

import java.util.List;
import org.sagwise.circuit.Branch;
import org.sagwise.circuit.Row;
import org.sagwise.circuit.Rows;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.net.Nets;

/**
 * How the cells that are joined to anything stand, whatever the picture looks like and whatever else
 * hangs on them.
 */
record CellLayout(List<Branch> cells) {

    static CellLayout of(Scenario scenario) {
        Nets nets = byLinks(scenario);
        return new CellLayout(scenario.partsOf(PartKind.CELL).stream()
                .filter(cell -> scenario.links().stream().anyMatch(link -> link.touches(cell.id())))
                .map(cell -> new Branch(cell.id(), nets.of(cell.terminal("-")), nets.of(cell.terminal("+"))))
                .toList());
    }

    /** What links join, whatever they are. */
    static Nets byLinks(Scenario scenario) {
        return Nets.of(scenario, link -> true);
    }

    /** How many of so many cells side by side stand against the rest; -1 if they do not. */
    int turnedSideBySide(int count) {
        List<List<Branch>> groups = Rows.groups(cells);
        if (count < 2 || groups.size() != 1 || !isAll(count, groups.get(0).size())) {
            return -1;
        }
        int along = (int) cells.stream()
                .filter(cell -> cell.from() == cells.get(0).from())
                .count();
        return Math.min(along, count - along);
    }

    /** How many of so many cells in one row stand against the rest; -1 if they are no row. */
    int turnedInRow(int count) {
        List<Row> rows = Rows.of(cells, net -> false);
        if (rows.size() != 1
                || !isAll(count, rows.get(0).groups().size())
                || rows.get(0).isRing()) {
            return -1;
        }
        return (count - Math.abs(rows.get(0).climb())) / 2;
    }

    private boolean isAll(int count, int found) {
        return cells.size() == count && found == count;
    }
}
