package org.sagwise.caution;

import java.util.List;
import org.sagwise.caution.circuit.Conflict;

/**
 * Rows side by side have different numbers of cells, one against two say, so that the longer row
 * drives current through the shorter one.
 */
final class UnequalRows implements HazardRule {

    static final String ID = "unequal-rows-in-parallel";

    @Override
    public List<Caution> check(Evidence evidence) {
        return Fight.all(evidence, Conflict.Kind.UNEQUAL_ROWS).stream()
                .map(fight -> fight.caution(evidence, ID)
                        .parts(fight.busiest())
                        .parts(fight.members())
                        .build())
                .toList();
    }
}
