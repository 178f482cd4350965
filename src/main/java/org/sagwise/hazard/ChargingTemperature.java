package org.sagwise.hazard;

import java.util.List;
import org.sagwise.part.Band;

/**
 * A cell is charged at a temperature at which makers forbid it, typically below 0 °C (lithium
 * plates out as metal) and above 45 °C.
 */
final class ChargingTemperature implements HazardRule {

    /** Current into a cell from which on it counts as charging, A: our choice. */
    static final double LEAST_A = 0.05;

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.cells(ChargingTemperature::isForbidden, CellView::chargeA).stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    private static boolean isForbidden(CellView cell) {
        return cell.chargeA() > LEAST_A && !band(cell).contains(cell.temperatureC());
    }

    private static Band band(CellView cell) {
        return cell.distress().chargingC();
    }

    private static CautionBuilder caution(HazardContext context, PackCells.Hit cells) {
        CellView worst = cells.worst();
        double temperatureC = worst.temperatureC();
        Band band = band(worst);
        boolean cold = temperatureC < band.from();
        return new CautionBuilder(context, cold ? Signal.WARNING : Signal.CAUTION)
                .when(cells.view().when())
                .parts(cells.ids())
                .measured(temperatureC, cold ? band.from() : band.to(), "°C")
                .variant(cold ? "cold" : "hot")
                .detail("currentA", worst.chargeA());
    }
}
