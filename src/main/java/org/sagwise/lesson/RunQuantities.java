package org.sagwise.lesson;

import java.util.OptionalDouble;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.run.CellMoment;
import org.sagwise.run.RunState;

/** What a run came to, by the names that lessons use. */
final class RunQuantities {

    private RunQuantities() {}

    static OptionalDouble read(Gauge gauge, String part, String quantity) {
        RunState last = gauge.run().last();
        if (part.equals(Quantities.PACK)) {
            return switch (quantity) {
                case "time_s" -> OptionalDouble.of(last.timeS());
                case "energy_Wh" -> OptionalDouble.of(last.energy().deliveredWh());
                default -> OptionalDouble.empty();
            };
        }
        return last.cells().stream()
                .filter(cell -> cell.id().equals(part))
                .findFirst()
                .map(cell -> ofCell(gauge.bench().cells().get(part), cell, quantity))
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble ofCell(ResolvedCell cell, CellMoment end, String quantity) {
        return switch (quantity) {
            case "charge" -> OptionalDouble.of(end.charge());
            case "rest_V" -> OptionalDouble.of(end.restV());
            case "terminal_V" -> OptionalDouble.of(end.terminalV());
            case "peak_C" -> OptionalDouble.of(end.peakC());
            case "given_Ah" -> OptionalDouble.of((cell.start().charge() - end.charge()) * cell.capacityAh());
            default -> OptionalDouble.empty();
        };
    }
}
