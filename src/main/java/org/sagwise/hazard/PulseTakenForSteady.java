package org.sagwise.hazard;

import java.util.List;
import org.sagwise.part.CellSpec;
import org.sagwise.part.Pulse;
import org.sagwise.reading.CellReading;

/**
 * A cell gives more than its continuous limit and no more than its pulse rating: within the rating
 * for some seconds and over the limit after that. The time limit is the maker's, {@code pulse_s}.
 */
final class PulseTakenForSteady implements HazardRule {

    static final String ID = "pulse-as-continuous";

    @Override
    public List<Caution> check(HazardContext context) {
        return context.cells(cell -> isPulse(cell, context.spec(cell.id())), CellReading::loadFraction).stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    /** Whether a cell's current lies between its continuous limit and its pulse rating. */
    static boolean isPulse(CellReading cell, CellSpec spec) {
        return cell.currentA() > cell.limitA()
                && spec.pulse()
                        .filter(pulse -> cell.currentA() <= pulse.currentA())
                        .isPresent();
    }

    private static Caution caution(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        Pulse pulse = context.spec(worst.id()).pulse().orElseThrow();
        return new CautionBuilder(context, ID, Signal.WARNING)
                .when(cells.view().when())
                .parts(cells.ids())
                .measured(worst.currentA(), worst.limitA(), "A")
                .detail("pulseA", pulse.currentA())
                .detail("pulseS", pulse.durationS())
                .build();
    }
}
