package org.sagwise.hazard;

import java.util.List;
import org.sagwise.part.CellSpec;
import org.sagwise.reading.CellReading;

/**
 * A cell gives more than its continuous discharge limit: what is above the limit counts, and from
 * {@link Gravity#HEAVY} times the limit on it is DANGER. A cell within its pulse rating is left to
 * {@link PulseTakenForSteady}.
 */
final class CellOverLimit implements HazardRule {

    static final String ID = "cell-over-limit";

    @Override
    public List<Caution> check(HazardContext context) {
        return context.cells(cell -> isOver(cell, context.spec(cell.id())), CellReading::loadFraction).stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    private static boolean isOver(CellReading cell, CellSpec spec) {
        return cell.currentA() > cell.limitA() && !PulseTakenForSteady.isPulse(cell, spec);
    }

    private static Caution caution(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(context, ID, Gravity.drawn(worst.currentA(), worst.limitA()))
                .when(cells.view().when())
                .parts(cells.ids())
                .measured(worst.currentA(), worst.limitA(), "A")
                .variant(cells.ids().size() == 1 ? "one" : "many")
                .detail("heatW", worst.heatW())
                .build();
    }
}
