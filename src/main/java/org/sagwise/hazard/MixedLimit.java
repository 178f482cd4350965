package org.sagwise.hazard;

import java.util.List;

/**
 * Cells of different continuous limit in one pack: the weakest cell sets what the pack can bear.
 */
final class MixedLimit implements HazardRule {
    static final String ID = "mixed-limit";

    /** Ratio of limits up to which cells count as alike: our choice. */
    static final double ALIKE = 1.05;

    @Override
    public List<Caution> check(HazardContext context) {
        return context.teams().stream()
                .map(cells -> Spread.of(cells, id -> context.spec(id).limitA()))
                .filter(spread -> spread.ratio() > ALIKE)
                .map(spread -> spread.caution(context, ID, Signal.CAUTION)
                        .detail("lowA", spread.lowest())
                        .detail("highA", spread.highest())
                        .build())
                .toList();
    }
}
