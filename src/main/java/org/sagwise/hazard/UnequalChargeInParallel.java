package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.sagwise.circuit.Pack;

/**
 * Cells side by side of unequal charge: the fuller ones charge the emptier ones with nothing but
 * resistance to limit it, i = (E1 − E2)/(R1 + R2) for two, button or no button. Held against the
 * charge limit of the cell that takes.
 */
final class UnequalChargeInParallel implements HazardRule {

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        List<String> seen = new ArrayList<>();
        for (SwitchView view : context.views()) {
            for (Pack pack : view.packs()) {
                if (isLeftAlone(context, view, pack) && Collections.disjoint(seen, pack.parts())) {
                    mostCharged(context, view, pack).ifPresent(taker -> {
                        found.add(caution(context, view, pack, taker));
                        seen.addAll(pack.parts());
                    });
                }
            }
        }
        return found;
    }

    /** Whether the cells themselves charge one another: without a charger, or more than it does. */
    private static boolean isLeftAlone(HazardContext context, SwitchView view, Pack pack) {
        return !pack.loops().isEmpty()
                && pack.parts().stream().noneMatch(context::isInConflict)
                && (!context.isCharging(view, pack.parts().get(0)) || isMostlyFromCells(context, view, pack));
    }

    private static boolean isMostlyFromCells(HazardContext context, SwitchView view, Pack pack) {
        double given = context.cellsOf(pack).stream()
                .mapToDouble(cell -> Math.max(0, view.cell(cell).currentA()))
                .sum();
        double taken = context.cellsOf(pack).stream()
                .mapToDouble(cell -> Math.max(0, -view.cell(cell).currentA()))
                .sum();
        return 2 * given > taken;
    }

    private static Optional<CellView> mostCharged(HazardContext context, SwitchView view, Pack pack) {
        return context.cellsOf(pack).stream()
                .map(view::cell)
                .filter(cell -> -cell.currentA() > cell.spec().chargeLimitA())
                .min(Worst.least(CellView::currentA));
    }

    private static CautionBuilder caution(HazardContext context, SwitchView view, Pack pack, CellView taker) {
        CellView giver = context.cellsOf(pack).stream()
                .map(view::cell)
                .min(Worst.first(CellView::currentA))
                .orElseThrow();
        double takenA = -taker.currentA();
        return new CautionBuilder(context, Gravity.pushedIn(takenA, taker.limitA()))
                .when(view.when())
                .parts(taker.id(), giver.id())
                .measured(takenA, taker.spec().chargeLimitA(), "A")
                .names("giver", List.of(giver.id()))
                .detail("takerV", taker.restV())
                .detail("giverV", giver.restV());
    }
}
