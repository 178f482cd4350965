package org.sagwise.hazard;

import java.util.List;

/**
 * Cells of different capacity in one pack: in a row the smaller is empty first and is driven on,
 * side by side it works harder for its size.
 */
final class MixedCapacity implements HazardRule {
    static final String ID = "mixed-capacity";

    /** Ratio of capacities up to which cells count as alike: spread of one model, from memory. */
    static final double ALIKE = 1.05;

    @Override
    public List<Caution> check(HazardContext context) {
        return context.teams().stream()
                .map(cells -> Spread.of(cells, id -> context.spec(id).capacityAh()))
                .filter(spread -> spread.ratio() > ALIKE)
                .map(spread -> spread.caution(context, ID, Signal.CAUTION)
                        .detail("lowAh", spread.lowest())
                        .detail("highAh", spread.highest())
                        .build())
                .toList();
    }
}
