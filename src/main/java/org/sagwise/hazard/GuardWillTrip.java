package org.sagwise.hazard;

import java.util.List;
import org.sagwise.part.Guard;
import org.sagwise.reading.CellReading;

/**
 * A protected cell is asked for more than its guard lets through: it opens and the device is dead.
 * Common practice, no source: such cells give about 10 A at most.
 */
final class GuardWillTrip implements HazardRule {
    static final String ID = "guard-trip";

    @Override
    public List<Caution> check(HazardContext context) {
        return context
                .cells(
                        cell -> Math.abs(cell.currentA()) > tripA(context, cell),
                        cell -> Math.abs(cell.currentA()) / tripA(context, cell))
                .stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    private static double tripA(HazardContext context, CellReading cell) {
        return context.spec(cell.id()).guard().map(Guard::tripA).orElse(Double.POSITIVE_INFINITY);
    }

    private static Caution caution(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        Guard guard = context.spec(worst.id()).guard().orElseThrow();
        return new CautionBuilder(context, ID, Signal.NOTICE)
                .when(cells.view().when())
                .parts(cells.ids())
                .measured(Math.abs(worst.currentA()), guard.tripA(), "A")
                .detail("tripS", guard.tripS())
                .build();
    }
}
