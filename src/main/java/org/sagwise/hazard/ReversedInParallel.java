package org.sagwise.hazard;

import java.util.List;
import org.sagwise.caution.circuit.Conflict;

/**
 * A cell stands the other way round than those beside it, so that they drive current through one
 * another with no load in the way, button or no button: i = (E1 + E2)/(R1 + R2) for two.
 */
final class ReversedInParallel implements HazardRule {

    static final String ID = "reversed-in-parallel";

    @Override
    public List<Caution> check(HazardContext context) {
        return ConflictCurrent.all(context, Conflict.Kind.REVERSED).stream()
                .map(current -> current.caution(context, ID)
                        .parts(current.turned())
                        .parts(current.others())
                        .names("turned", current.turned())
                        .names("rest", current.others())
                        .build())
                .toList();
    }
}
