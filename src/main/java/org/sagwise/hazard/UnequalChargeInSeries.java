package org.sagwise.hazard;

import java.util.Comparator;
import java.util.List;
import org.sagwise.caution.circuit.Row;
import org.sagwise.reading.CellReading;

/**
 * Cells in a row of unequal charge: the same current empties all, so the emptiest is driven below
 * its cut-off while the others still push.
 */
final class UnequalChargeInSeries implements HazardRule {

    static final String ID = "unequal-charge-in-series";

    /** Difference of rest voltages from which on it counts, V: common practice, no source. */
    static final double MOST_APART_V = 0.1;

    @Override
    public List<Caution> check(HazardContext context) {
        return context.rows().stream()
                .filter(row -> !row.isOpposed())
                .map(row -> cells(context, row))
                .filter(cells -> apartV(cells) > MOST_APART_V)
                .map(cells -> caution(context, cells))
                .toList();
    }

    /** The cells of a row, the emptiest first. */
    private static List<CellReading> cells(HazardContext context, Row row) {
        return row.sources().stream()
                .filter(context::isCell)
                .map(source -> context.atRest().cell(source.part()))
                .sorted(Comparator.comparingDouble(CellReading::restV))
                .toList();
    }

    private static double apartV(List<CellReading> cells) {
        return cells.isEmpty()
                ? 0
                : cells.get(cells.size() - 1).restV() - cells.get(0).restV();
    }

    private static Caution caution(HazardContext context, List<CellReading> cells) {
        CellReading low = cells.get(0);
        CellReading high = cells.get(cells.size() - 1);
        return new CautionBuilder(context, ID, Signal.CAUTION)
                .parts(low.id(), high.id())
                .measured(apartV(cells), MOST_APART_V, "V")
                .names("high", List.of(high.id()))
                .detail("lowV", low.restV())
                .detail("highV", high.restV())
                .build();
    }
}
