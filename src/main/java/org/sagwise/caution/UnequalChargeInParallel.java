package org.sagwise.caution;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.sagwise.caution.circuit.Pack;
import org.sagwise.reading.CellReading;

/**
 * Cells side by side of unequal charge: the fuller ones charge the emptier ones with nothing but
 * resistance to limit it, i = (E1 − E2)/(R1 + R2) for two, button or no button. Held against the
 * charge limit of the cell that takes.
 */
final class UnequalChargeInParallel implements HazardRule {

    static final String ID = "unequal-charge-in-parallel";

    @Override
    public List<Caution> check(Evidence evidence) {
        List<Caution> found = new ArrayList<>();
        List<String> seen = new ArrayList<>();
        for (Look look : evidence.looks()) {
            for (Pack pack : look.packs()) {
                if (isLeftAlone(evidence, look, pack) && Collections.disjoint(seen, pack.parts())) {
                    mostCharged(evidence, look, pack).ifPresent(taker -> {
                        found.add(caution(evidence, look, pack, taker));
                        seen.addAll(pack.parts());
                    });
                }
            }
        }
        return found;
    }

    /** Whether nothing but the cells themselves can charge them. */
    private static boolean isLeftAlone(Evidence evidence, Look look, Pack pack) {
        return !pack.loops().isEmpty()
                && pack.parts().stream().noneMatch(evidence::isInConflict)
                && !evidence.isCharging(look, pack.parts().get(0));
    }

    private static Optional<CellReading> mostCharged(Evidence evidence, Look look, Pack pack) {
        return evidence.cellsOf(pack).stream()
                .map(look::cell)
                .filter(cell -> -cell.currentA() > evidence.spec(cell.id()).chargeLimitA())
                .min(Comparator.comparingDouble(CellReading::currentA));
    }

    private static Caution caution(Evidence evidence, Look look, Pack pack, CellReading taker) {
        CellReading giver = evidence.cellsOf(pack).stream()
                .map(look::cell)
                .max(Comparator.comparingDouble(CellReading::currentA))
                .orElseThrow();
        double takenA = -taker.currentA();
        return new CautionBuilder(evidence, ID, Gravity.pushedIn(takenA, taker.limitA()))
                .when(look.when())
                .parts(taker.id(), giver.id())
                .measured(takenA, evidence.spec(taker.id()).chargeLimitA(), "A")
                .names("giver", List.of(giver.id()))
                .detail("takerV", taker.restV())
                .detail("giverV", giver.restV())
                .build();
    }
}
