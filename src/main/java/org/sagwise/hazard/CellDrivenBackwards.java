package org.sagwise.hazard;

import java.util.List;
import org.sagwise.reading.CellReading;

/**
 * Other cells push current through an empty one the way it would give it, so that its terminals
 * show less than 0 V: it is driven into reversal.
 */
final class CellDrivenBackwards implements HazardRule {
    static final String ID = "cell-driven-backwards";

    /** Volts below which the terminals count as reversed, V: beyond what rounding can do. */
    static final double REVERSED_V = -1e-3;

    @Override
    public List<Caution> check(HazardContext context) {
        return context.cells(CellDrivenBackwards::isReversed, cell -> -cell.terminalV()).stream()
                .map(cells -> caution(context, cells))
                .toList();
    }

    private static boolean isReversed(CellReading cell) {
        return cell.currentA() > SwitchView.NO_CURRENT_A && cell.terminalV() < REVERSED_V;
    }

    private static Caution caution(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(context, ID, Signal.WARNING)
                .when(cells.view().when())
                .parts(cells.ids())
                .measured(worst.terminalV(), 0, "V")
                .detail("currentA", worst.currentA())
                .build();
    }
}
