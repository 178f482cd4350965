package org.sagwise.lesson;

import java.util.List;
import java.util.OptionalDouble;
import org.sagwise.reading.NamedReading;
import org.sagwise.reading.ReadingTable;
import org.sagwise.reading.ReadingTable.Row;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.run.CellMoment;
import org.sagwise.run.RunState;

/** What a run came to, by the names that lessons use. */
final class RunQuantities {

    private static final ReadingTable<RunState> PACK = new ReadingTable<>(List.of(
            new Row<>("time_s", RunState::timeS),
            new Row<>("energy_Wh", last -> last.energy().deliveredWh())));

    private static final ReadingTable<CellEnd> CELL = new ReadingTable<>(List.of(
            new Row<>("charge", cell -> cell.end().charge()),
            new Row<>("rest_V", cell -> cell.end().restV()),
            new Row<>("terminal_V", cell -> cell.end().terminalV()),
            new Row<>("peak_C", cell -> cell.end().peakC()),
            new Row<>("given_Ah", CellEnd::givenAh)));

    private RunQuantities() {}

    private record CellEnd(ResolvedCell cell, CellMoment end) {

        double givenAh() {
            return (cell.start().charge() - end.charge()) * cell.capacityAh();
        }
    }

    static OptionalDouble read(Gauge gauge, String part, String quantity) {
        RunState last = gauge.run().last();
        if (part.equals(NamedReading.PACK)) {
            return PACK.read(last, quantity);
        }
        return last.cells().stream()
                .filter(cell -> cell.id().equals(part))
                .findFirst()
                .map(end -> CELL.read(new CellEnd(gauge.bench().cells().get(part), end), quantity))
                .orElse(OptionalDouble.empty());
    }
}
