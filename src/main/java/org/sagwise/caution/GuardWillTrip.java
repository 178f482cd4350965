package org.sagwise.caution;

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
    public List<Caution> check(Evidence evidence) {
        return evidence
                .cells(
                        cell -> Math.abs(cell.currentA()) > tripA(evidence, cell),
                        cell -> Math.abs(cell.currentA()) / tripA(evidence, cell))
                .stream()
                .map(cells -> caution(evidence, cells))
                .toList();
    }

    private static double tripA(Evidence evidence, CellReading cell) {
        return evidence.spec(cell.id()).guard().map(Guard::tripA).orElse(Double.POSITIVE_INFINITY);
    }

    private static Caution caution(Evidence evidence, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        Guard guard = evidence.spec(worst.id()).guard().orElseThrow();
        return new CautionBuilder(evidence, ID, Signal.NOTICE)
                .when(cells.look().when())
                .parts(cells.ids())
                .measured(Math.abs(worst.currentA()), guard.tripA(), "A")
                .detail("tripS", guard.tripS())
                .build();
    }
}
