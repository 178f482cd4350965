package org.sagwise.caution;

import java.util.List;
import org.sagwise.caution.circuit.Conflict;

/**
 * A cell stands the other way round than those beside it, so that they drive current through one
 * another with no load in the way, button or no button: i = (E1 + E2)/(R1 + R2) for two.
 */
final class ReversedInParallel implements HazardRule {

    static final String ID = "reversed-in-parallel";

    @Override
    public List<Caution> check(Evidence evidence) {
        return Fight.all(evidence, Conflict.Kind.REVERSED).stream()
                .map(fight -> fight.caution(evidence, ID)
                        .parts(fight.turned())
                        .parts(fight.others())
                        .names("turned", fight.turned())
                        .names("rest", fight.others())
                        .build())
                .toList();
    }
}
