package org.sagwise.hazard;

import java.util.List;

/**
 * Cells in one pack whose internal resistances at the same temperature and charge differ: a sign of
 * different age or make. Side by side the current divides by resistance.
 */
final class MixedResistance implements HazardRule {
    static final String ID = "mixed-resistance";

    /**
     * Ratio of resistances up to which cells count as alike. A mismatch of 20 % shortened the life
     * of two cells side by side by some 40 % at 4.5 C (Gogoana, Pinson, Bazant and Sarma, Journal
     * of Power Sources 252 (2014) 8–13); resistances measured by hand scatter as much, so only half
     * as much again is called a mixed pack: our choice.
     */
    static final double ALIKE = 1.5;

    @Override
    public List<Caution> check(HazardContext context) {
        return context.teams().stream()
                .map(cells -> Spread.of(cells, id -> context.spec(id).internalOhm()))
                .filter(spread -> spread.lowest() > 0 && spread.ratio() > ALIKE)
                .map(spread -> spread.caution(context, ID, Signal.CAUTION)
                        .detail("lowOhm", spread.lowest())
                        .detail("highOhm", spread.highest())
                        .build())
                .toList();
    }
}
