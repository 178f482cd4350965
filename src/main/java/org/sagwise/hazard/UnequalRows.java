package org.sagwise.hazard;

import java.util.List;
import org.sagwise.caution.circuit.Conflict;

/**
 * Rows side by side have different numbers of cells, one against two say, so that the longer row
 * drives current through the shorter one.
 */
final class UnequalRows implements HazardRule {

    static final String ID = "unequal-rows-in-parallel";

    @Override
    public List<Caution> check(HazardContext context) {
        return ConflictCurrent.all(context, Conflict.Kind.UNEQUAL_ROWS).stream()
                .map(current -> current.caution(context, ID)
                        .parts(current.busiest())
                        .parts(current.members())
                        .build())
                .toList();
    }
}
