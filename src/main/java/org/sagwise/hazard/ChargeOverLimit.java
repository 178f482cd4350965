package org.sagwise.hazard;

import java.util.List;
import org.sagwise.reading.CellReading;

/**
 * More current is pushed into a cell than its maker allows for charging. The limit is the cell's
 * own; where nobody gave one it is half its capacity an hour, the standard charge.
 */
final class ChargeOverLimit implements HazardRule {
    static final String ID = "charge-over-limit";

    @Override
    public List<Caution> check(HazardContext context) {
        return context
                .cells(
                        cell -> -cell.currentA() > context.spec(cell.id()).chargeLimitA() * SLACK,
                        cell -> -cell.currentA() / context.spec(cell.id()).chargeLimitA())
                .stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    private static Caution caution(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(context, ID, Gravity.pushedIn(-worst.currentA(), worst.limitA()))
                .when(cells.view().when())
                .parts(cells.ids())
                .measured(-worst.currentA(), context.spec(worst.id()).chargeLimitA(), "A")
                .build();
    }

    /** So that a charger of exactly the limit passes. */
    private static final double SLACK = 1 + 1e-6;
}
