package org.sagwise.hazard;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * A hazard that begins where a number of a single cell passes a limit. Cells of one pack to which
 * it happens are one caution, the worst cell first.
 *
 * @param threshold the number and its limit
 * @param lasts whether it is so whatever the button does
 * @param gravity how grave it is for the worst cell
 * @param words what else the texts name
 */
record CellThreshold(
        Threshold<CellView> threshold,
        boolean lasts,
        Function<CellView, Signal> gravity,
        BiConsumer<CautionBuilder, CellView> words)
        implements HazardRule {

    /** About the state that a cell is in, which the button does not change. */
    static CellThreshold ofState(Threshold<CellView> threshold, Function<CellView, Signal> gravity) {
        return new CellThreshold(threshold, true, gravity, (caution, worst) -> {});
    }

    /** About what a cell does in one position of the button. */
    static CellThreshold ofCurrent(Threshold<CellView> threshold, Function<CellView, Signal> gravity) {
        return new CellThreshold(threshold, false, gravity, (caution, worst) -> {});
    }

    static Function<CellView, Signal> always(Signal signal) {
        return worst -> signal;
    }

    /** The same with further details. */
    CellThreshold with(BiConsumer<CautionBuilder, CellView> details) {
        return new CellThreshold(threshold, lasts, gravity, details);
    }

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.cells(threshold::isPassed, threshold::size).stream()
                .map(hit -> caution(context, hit))
                .toList();
    }

    private CautionBuilder caution(HazardContext context, PackCells.Hit hit) {
        CellView worst = hit.worst();
        CautionBuilder caution = new CautionBuilder(context, gravity.apply(worst)).parts(hit.ids());
        if (!lasts) {
            caution.when(hit.view().when());
        }
        words.accept(threshold.measured(caution, worst), worst);
        return caution;
    }
}
