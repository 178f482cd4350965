package org.sagwise.hazard;

import java.util.List;

/**
 * Cells of different chemistry in one pack: their full, empty and rest voltages differ, so no
 * charge suits both.
 */
final class MixedChemistry implements HazardRule {
    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.teams().stream()
                .map(cells ->
                        Spread.of(cells, id -> context.spec(id).chemistry().ordinal()))
                .filter(spread -> spread.highest() > spread.lowest())
                .map(spread -> spread.caution(context, Signal.WARNING)
                        .detail("lowKind", kind(context, spread.lowestId()))
                        .detail("highKind", kind(context, spread.highestId())))
                .toList();
    }

    private static String kind(HazardContext context, String cell) {
        return context.spec(cell).chemistry().name();
    }
}
