package org.sagwise.hazard;

import java.util.List;
import org.sagwise.part.WireLimits;

/**
 * A jumper carries a current that melts a wire of its gauge in the long run: {@link
 * WireLimits#meltingCurrentA(org.sagwise.part.WireSize)}, Preece's formula.
 */
final class JumperOverFusing implements HazardRule {
    static final String ID = "jumper-over-fusing";

    @Override
    public List<Caution> check(HazardContext context) {
        List<JumperLoads.Load> over = JumperLoads.over(context, WireLimits::meltingCurrentA);
        return over.isEmpty() ? List.of() : List.of(over.get(0).caution(context, ID, Signal.WARNING, over));
    }
}
