package org.sagwise.hazard;

import java.util.List;
import org.sagwise.reading.CellReading;

/** A cell that gives current falls below its cut-off under the load. */
final class CellBelowCutoff implements HazardRule {
    static final String ID = "cell-below-cutoff";

    @Override
    public List<Caution> check(HazardContext context) {
        return context.cells(cell -> isBelow(context, cell), cell -> -cell.terminalV()).stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    private static boolean isBelow(HazardContext context, CellReading cell) {
        return cell.currentA() > SwitchView.NO_CURRENT_A
                && cell.terminalV() < context.spec(cell.id()).cutoffV()
                && cell.terminalV() >= 0;
    }

    private static Caution caution(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(context, ID, Signal.NOTICE)
                .when(cells.view().when())
                .parts(cells.ids())
                .measured(worst.terminalV(), context.spec(worst.id()).cutoffV(), "V")
                .detail("restV", worst.restV())
                .build();
    }
}
