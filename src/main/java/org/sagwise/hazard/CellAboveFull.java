package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.reading.CellReading;

/**
 * A cell rests above its full voltage, or is charged beyond it. Makers ask for 4.20 ± 0.05 V
 * (typical, from memory): what is within that passes.
 */
final class CellAboveFull implements HazardRule {
    static final String ID = "cell-above-full";
    static final String CHARGED_ID = "cell-charged-above-full";

    /** What a full cell may be above its full voltage, V: typical of data sheets, from memory. */
    static final double SLACK_V = 0.05;

    @Override
    public List<Caution> check(HazardContext context) {
        List<Caution> found = new ArrayList<>();
        context.cells(cell -> cell.restV() > mostV(context, cell), cell -> cell.restV() - mostV(context, cell))
                .forEach(cells -> found.add(
                        caution(context, cells, ID, cells.worst().restV()).build()));
        context.cells(cell -> isChargedAbove(context, cell), cell -> cell.terminalV() - mostV(context, cell))
                .forEach(cells -> found.add(
                        caution(context, cells, CHARGED_ID, cells.worst().terminalV())
                                .when(cells.view().when())
                                .build()));
        return found;
    }

    private static boolean isChargedAbove(HazardContext context, CellReading cell) {
        return cell.currentA() < -SwitchView.NO_CURRENT_A
                && cell.terminalV() > mostV(context, cell)
                && cell.restV() <= mostV(context, cell);
    }

    private static double mostV(HazardContext context, CellReading cell) {
        return context.spec(cell.id()).fullV() + SLACK_V;
    }

    private static CautionBuilder caution(HazardContext context, PackCells.Hit cells, String id, double volts) {
        return new CautionBuilder(context, id, Signal.WARNING)
                .parts(cells.ids())
                .measured(volts, context.spec(cells.worst().id()).fullV(), "V");
    }
}
