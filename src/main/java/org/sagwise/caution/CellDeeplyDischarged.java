package org.sagwise.caution;

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
    public List<Caution> check(Evidence evidence) {
        return evidence.cells(cell -> isDeep(evidence, cell), cell -> -cell.restV()).stream()
                .map(cells -> caution(evidence, cells))
                .toList();
    }

    static boolean isDeep(Evidence evidence, CellReading cell) {
        return cell.restV() < lowestV(evidence, cell);
    }

    private static double lowestV(Evidence evidence, CellReading cell) {
        return evidence.spec(cell.id()).chemistry().distress().doNotRechargeBelowV();
    }

    private static Caution caution(Evidence evidence, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(evidence, ID, Signal.WARNING)
                .parts(cells.ids())
                .measured(worst.restV(), lowestV(evidence, worst), "V")
                .build();
    }
}
