package org.sagwise.hazard;

import java.util.List;
import org.sagwise.reading.CellReading;

/**
 * A cell rests so low that it should not be charged again: below some 2 V, common practice, no
 * source. Copper of its current collector may have dissolved (series reversal: Journal of The
 * Electrochemical Society 165(9), A1639, 2018).
 */
final class CellDeeplyDischarged implements HazardRule {
    static final String ID = "cell-deep-discharged";

    @Override
    public List<Caution> check(HazardContext context) {
        return context.cells(cell -> isDeep(context, cell), cell -> -cell.restV()).stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    static boolean isDeep(HazardContext context, CellReading cell) {
        return cell.restV() < lowestV(context, cell);
    }

    private static double lowestV(HazardContext context, CellReading cell) {
        return context.spec(cell.id()).chemistry().distress().doNotRechargeBelowV();
    }

    private static Caution caution(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(context, ID, Signal.WARNING)
                .parts(cells.ids())
                .measured(worst.restV(), lowestV(context, worst), "V")
                .build();
    }
}
