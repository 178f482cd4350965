package org.sagwise.caution;

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
    public List<Caution> check(Evidence evidence) {
        List<Caution> found = new ArrayList<>();
        evidence.cells(cell -> cell.restV() > mostV(evidence, cell), cell -> cell.restV() - mostV(evidence, cell))
                .forEach(cells -> found.add(
                        caution(evidence, cells, ID, cells.worst().restV()).build()));
        evidence.cells(cell -> isChargedAbove(evidence, cell), cell -> cell.terminalV() - mostV(evidence, cell))
                .forEach(cells -> found.add(
                        caution(evidence, cells, CHARGED_ID, cells.worst().terminalV())
                                .when(cells.look().when())
                                .build()));
        return found;
    }

    private static boolean isChargedAbove(Evidence evidence, CellReading cell) {
        return cell.currentA() < -Look.NO_CURRENT_A
                && cell.terminalV() > mostV(evidence, cell)
                && cell.restV() <= mostV(evidence, cell);
    }

    private static double mostV(Evidence evidence, CellReading cell) {
        return evidence.spec(cell.id()).fullV() + SLACK_V;
    }

    private static CautionBuilder caution(Evidence evidence, PackCells.Hit cells, String id, double volts) {
        return new CautionBuilder(evidence, id, Signal.WARNING)
                .parts(cells.ids())
                .measured(volts, evidence.spec(cells.worst().id()).fullV(), "V");
    }
}
