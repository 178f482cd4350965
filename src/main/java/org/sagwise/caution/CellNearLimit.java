package org.sagwise.caution;

import java.util.List;
import org.sagwise.reading.CellReading;

/**
 * A cell gives more than {@link Gravity#NEAR} of its continuous discharge limit, though not more
 * than the limit.
 */
final class CellNearLimit implements HazardRule {

    static final String ID = "cell-near-limit";

    @Override
    public List<Caution> check(Evidence evidence) {
        return evidence.cells(CellNearLimit::isNear, CellReading::loadFraction).stream()
                .map(cells -> caution(evidence, cells))
                .toList();
    }

    private static boolean isNear(CellReading cell) {
        return cell.currentA() > Gravity.NEAR * cell.limitA() && cell.currentA() <= cell.limitA();
    }

    private static Caution caution(Evidence evidence, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(evidence, ID, Signal.CAUTION)
                .when(cells.look().when())
                .parts(cells.ids())
                .measured(worst.currentA(), worst.limitA(), "A")
                .build();
    }
}
