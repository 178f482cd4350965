package org.sagwise.caution;

import java.util.List;

/**
 * Cells of different chemistry in one pack: their full, empty and rest voltages differ, so no
 * charge suits both.
 */
final class MixedChemistry implements HazardRule {
    static final String ID = "mixed-chemistry";

    @Override
    public List<Caution> check(Evidence evidence) {
        return evidence.teams().stream()
                .map(cells ->
                        Spread.of(cells, id -> evidence.spec(id).chemistry().ordinal()))
                .filter(spread -> spread.highest() > spread.lowest())
                .map(spread -> spread.caution(evidence, ID, Signal.WARNING)
                        .detail("lowKind", kind(evidence, spread.lowestId()))
                        .detail("highKind", kind(evidence, spread.highestId()))
                        .build())
                .toList();
    }

    private static String kind(Evidence evidence, String cell) {
        return evidence.spec(cell).chemistry().name();
    }
}
