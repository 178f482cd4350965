package org.sagwise.caution;

import java.util.List;
import org.sagwise.reading.CellReading;

/** A cell rests below its cut-off, though not so low that it should not be charged again. */
final class CellEmpty implements HazardRule {
    static final String ID = "cell-empty";

    @Override
    public List<Caution> check(Evidence evidence) {
        return evidence.cells(cell -> isEmpty(evidence, cell), cell -> -cell.restV()).stream()
                .map(cells -> caution(evidence, cells))
                .toList();
    }

    private static boolean isEmpty(Evidence evidence, CellReading cell) {
        return cell.restV() < evidence.spec(cell.id()).cutoffV() && !CellDeeplyDischarged.isDeep(evidence, cell);
    }

    private static Caution caution(Evidence evidence, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(evidence, ID, Signal.NOTICE)
                .parts(cells.ids())
                .measured(worst.restV(), evidence.spec(worst.id()).cutoffV(), "V")
                .build();
    }
}
