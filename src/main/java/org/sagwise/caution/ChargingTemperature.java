package org.sagwise.caution;

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
    public List<Caution> check(Evidence evidence) {
        return evidence.cells(cell -> isForbidden(evidence, cell), cell -> -cell.currentA()).stream()
                .map(cells -> caution(evidence, cells))
                .toList();
    }

    private static boolean isForbidden(Evidence evidence, CellReading cell) {
        return cell.currentA() < -LEAST_A
                && !band(evidence, cell).contains(evidence.state(cell.id()).temperatureC());
    }

    private static Band band(Evidence evidence, CellReading cell) {
        return evidence.spec(cell.id()).chemistry().distress().chargingC();
    }

    private static Caution caution(Evidence evidence, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        double temperatureC = evidence.state(worst.id()).temperatureC();
        Band band = band(evidence, worst);
        boolean cold = temperatureC < band.from();
        return new CautionBuilder(evidence, ID, cold ? Signal.WARNING : Signal.CAUTION)
                .when(cells.look().when())
                .parts(cells.ids())
                .measured(temperatureC, cold ? band.from() : band.to(), "°C")
                .variant(cold ? "cold" : "hot")
                .detail("currentA", -worst.currentA())
                .build();
    }
}
