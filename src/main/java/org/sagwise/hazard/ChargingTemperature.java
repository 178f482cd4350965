package org.sagwise.hazard;

import java.util.List;
import org.sagwise.part.Band;
import org.sagwise.reading.CellReading;

/**
 * A cell is charged at a temperature at which makers forbid it, typically below 0 °C (lithium
 * plates out as metal) and above 45 °C.
 */
final class ChargingTemperature implements HazardRule {
    static final String ID = "charging-temperature";

    /** Current into a cell from which on it counts as charging, A: our choice. */
    static final double LEAST_A = 0.05;

    @Override
    public List<Caution> check(HazardContext context) {
        return context.cells(cell -> isForbidden(context, cell), cell -> -cell.currentA()).stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    private static boolean isForbidden(HazardContext context, CellReading cell) {
        return cell.currentA() < -LEAST_A
                && !band(context, cell).contains(context.state(cell.id()).temperatureC());
    }

    private static Band band(HazardContext context, CellReading cell) {
        return context.spec(cell.id()).chemistry().distress().chargingC();
    }

    private static Caution caution(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        double temperatureC = context.state(worst.id()).temperatureC();
        Band band = band(context, worst);
        boolean cold = temperatureC < band.from();
        return new CautionBuilder(context, ID, cold ? Signal.WARNING : Signal.CAUTION)
                .when(cells.view().when())
                .parts(cells.ids())
                .measured(temperatureC, cold ? band.from() : band.to(), "°C")
                .variant(cold ? "cold" : "hot")
                .detail("currentA", -worst.currentA())
                .build();
    }
}
