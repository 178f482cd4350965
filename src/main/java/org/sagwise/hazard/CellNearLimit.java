package org.sagwise.hazard;

import java.util.List;
import org.sagwise.reading.CellReading;

/**
 * A cell gives more than {@link Gravity#NEAR} of its continuous discharge limit, though not more
 * than the limit.
 */
final class CellNearLimit implements HazardRule {

    static final String ID = "cell-near-limit";

    @Override
    public List<Caution> check(HazardContext context) {
        return context.cells(CellNearLimit::isNear, CellReading::loadFraction).stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    private static boolean isNear(CellReading cell) {
        return cell.currentA() > Gravity.NEAR * cell.limitA() && cell.currentA() <= cell.limitA();
    }

    private static Caution caution(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(context, ID, Signal.CAUTION)
                .when(cells.view().when())
                .parts(cells.ids())
                .measured(worst.currentA(), worst.limitA(), "A")
                .build();
    }
}
