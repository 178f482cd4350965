package org.sagwise.caution;

import java.util.List;
import org.sagwise.reading.CellReading;

/** A cell that gives current falls below its cut-off under the load. */
final class CellBelowCutoff implements HazardRule {
    static final String ID = "cell-below-cutoff";

    @Override
    public List<Caution> check(Evidence evidence) {
        return evidence.cells(cell -> isBelow(evidence, cell), cell -> -cell.terminalV()).stream()
                .map(cells -> caution(evidence, cells))
                .toList();
    }

    private static boolean isBelow(Evidence evidence, CellReading cell) {
        return cell.currentA() > Look.NO_CURRENT_A
                && cell.terminalV() < evidence.spec(cell.id()).cutoffV()
                && cell.terminalV() >= 0;
    }

    private static Caution caution(Evidence evidence, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(evidence, ID, Signal.NOTICE)
                .when(cells.look().when())
                .parts(cells.ids())
                .measured(worst.terminalV(), evidence.spec(worst.id()).cutoffV(), "V")
                .detail("restV", worst.restV())
                .build();
    }
}
