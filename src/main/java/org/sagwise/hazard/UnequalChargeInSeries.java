package org.sagwise.hazard;

import java.util.Comparator;
import java.util.List;
import org.sagwise.circuit.Row;

/**
 * Cells in a row of unequal charge: the same current empties all, so the emptiest is driven below
 * its cut-off while the others still push; or it fills all, and the fullest is overcharged while
 * the charger waits for the others.
 */
final class UnequalChargeInSeries implements HazardRule {

    /** Difference of rest voltages from which on it counts, V: common practice, no source. */
    static final double MOST_APART_V = 0.1;

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.rows().stream()
                .filter(row -> !row.isOpposed())
                .map(row -> cells(context, row))
                .filter(cells -> apartV(cells) > MOST_APART_V)
                .map(cells -> caution(context, cells))
                .toList();
    }

    /** The cells of a row, the emptiest first. */
    private static List<CellView> cells(HazardContext context, Row row) {
        return row.sources().stream()
                .filter(context::isCell)
                .map(source -> context.atRest().cell(source.part()))
                .sorted(Comparator.comparingDouble(CellView::restV))
                .toList();
    }

    /** Whether something charges the row: then the fullest cell comes to harm. */
    private static boolean isFilled(HazardContext context, String cell) {
        return context.atRest().cell(cell).takes() || context.held().cell(cell).takes();
    }

    private static double apartV(List<CellView> cells) {
        return cells.isEmpty()
                ? 0
                : cells.get(cells.size() - 1).restV() - cells.get(0).restV();
    }

    private static CautionBuilder caution(HazardContext context, List<CellView> cells) {
        CellView low = cells.get(0);
        CellView high = cells.get(cells.size() - 1);
        if (isFilled(context, high.id())) {
            return new CautionBuilder(context, Signal.WARNING)
                    .variant("filled")
                    .parts(high.id(), low.id())
                    .measured(apartV(cells), MOST_APART_V, "V")
                    .names("low", List.of(low.id()))
                    .detail("lowV", low.restV())
                    .detail("highV", high.restV());
        }
        return new CautionBuilder(context, Signal.CAUTION)
                .parts(low.id(), high.id())
                .measured(apartV(cells), MOST_APART_V, "V")
                .names("high", List.of(high.id()))
                .detail("lowV", low.restV())
                .detail("highV", high.restV());
    }
}
