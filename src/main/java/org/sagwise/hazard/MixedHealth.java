package org.sagwise.hazard;

import java.util.List;

/**
 * Cells of different health in one pack, a worn one beside a new one: in a row the worn one is
 * empty first, side by side the new one carries more than its share.
 */
final class MixedHealth implements HazardRule {
    static final String ID = "mixed-health";

    /** Difference of health up to which cells count as alike: common practice, no source. */
    static final double ALIKE = 0.1;

    @Override
    public List<Caution> check(HazardContext context) {
        return context.teams().stream()
                .map(cells ->
                        Spread.of(cells, id -> context.bench().cells().get(id).health()))
                .filter(spread -> spread.highest() - spread.lowest() > ALIKE + ROUNDING)
                .map(spread -> spread.caution(context, ID, Signal.CAUTION)
                        .detail("lowShare", spread.lowest())
                        .detail("highShare", spread.highest())
                        .build())
                .toList();
    }

    /** So that 1.0 beside 0.9 counts as no more than the difference it is meant to be. */
    private static final double ROUNDING = 1e-9;
}
