package org.sagwise.report.explain;

import java.util.List;
import org.sagwise.circuit.Branch;
import org.sagwise.circuit.Netlist;
import org.sagwise.circuit.Row;
import org.sagwise.circuit.Rows;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.reading.ResolvedCoil;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.net.Nets;

/** The layout of a bench in one line: how many cells, how they are joined, and on which coil. */
final class Shape {

    private final Speech speech;
    private final Bench bench;

    Shape(Speech speech, Bench bench) {
        this.speech = speech;
        this.bench = bench;
    }

    String line() {
        boolean charged = !bench.scenario().partsOf(PartKind.CHARGER).isEmpty();
        if (bench.coils().isEmpty() && !charged) {
            return speech.sentence(speech.say("shape.alone", pack()));
        }
        String load = bench.coils().isEmpty() ? speech.say("shape.charger") : coils();
        boolean regulated = !bench.coils().isEmpty()
                && !bench.scenario().partsOf(PartKind.BOARD).isEmpty();
        return speech.sentence(speech.say("shape.on", pack(), regulated ? speech.say("shape.board", load) : load));
    }

    private String pack() {
        List<Part> cells = bench.scenario().partsOf(PartKind.CELL);
        if (cells.size() < 2) {
            return speech.say(cells.isEmpty() ? "shape.no-cell" : "shape.one-cell");
        }
        Netlist circuit = Netlist.of(
                bench.scenario(), Nets.of(bench.scenario(), bench::joins), part -> part.kind() != PartKind.METER);
        List<List<Branch>> groups = Rows.groups(circuit.sources());
        List<Row> rows = Rows.of(circuit);
        if (groups.size() == 1 && groups.get(0).size() == cells.size()) {
            return speech.say("shape.parallel", cells.size());
        }
        if (rows.size() == 1 && rows.get(0).sources().size() == cells.size()) {
            return row(rows.get(0), cells.size());
        }
        return speech.say("shape.cells", cells.size());
    }

    private String row(Row row, int cells) {
        int beside = row.groups().get(0).sources().size();
        boolean even = row.groups().stream().allMatch(group -> group.sources().size() == beside);
        if (!even) {
            return speech.say("shape.cells", cells);
        }
        return beside == 1
                ? speech.say("shape.series", cells)
                : speech.say("shape.both", row.groups().size(), beside);
    }

    private String coils() {
        List<ResolvedCoil> coils = List.copyOf(bench.coils().values());
        String first = speech.print(coils.get(0).ohm20(), Unit.OHM);
        if (coils.size() == 1) {
            return speech.say("shape.one-coil", first);
        }
        boolean alike = coils.stream()
                .allMatch(coil -> speech.print(coil.ohm20(), Unit.OHM).equals(first));
        return speech.say(alike ? "shape.coils-alike" : "shape.coils", coils.size(), first);
    }
}
