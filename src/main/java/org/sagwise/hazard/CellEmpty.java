package org.sagwise.hazard;

import java.util.List;
import org.sagwise.reading.CellReading;

/** A cell rests below its cut-off, though not so low that it should not be charged again. */
final class CellEmpty implements HazardRule {
    static final String ID = "cell-empty";

    @Override
    public List<Caution> check(HazardContext context) {
        return context.cells(cell -> isEmpty(context, cell), cell -> -cell.restV()).stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    private static boolean isEmpty(HazardContext context, CellReading cell) {
        return cell.restV() < context.spec(cell.id()).cutoffV() && !CellDeeplyDischarged.isDeep(context, cell);
    }

    private static Caution caution(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(context, ID, Signal.NOTICE)
                .parts(cells.ids())
                .measured(worst.restV(), context.spec(worst.id()).cutoffV(), "V")
                .build();
    }
}
