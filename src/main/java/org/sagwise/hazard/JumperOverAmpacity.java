package org.sagwise.hazard;

import java.util.List;
import org.sagwise.part.WireLimits;

/**
 * A jumper carries more than a wire of its gauge bears steadily: it grows hot and its insulation
 * softens. The limit is {@link WireLimits#steadyCurrentA}, a guide for copper in free air.
 */
final class JumperOverAmpacity implements HazardRule {
    static final String ID = "jumper-over-ampacity";

    @Override
    public List<Caution> check(HazardContext context) {
        List<JumperLoads.Load> over = JumperLoads.over(context, WireLimits::steadyCurrentA).stream()
                .filter(load -> load.currentA() <= WireLimits.meltingCurrentA(load.size()))
                .toList();
        return over.isEmpty() ? List.of() : List.of(over.get(0).caution(context, ID, Signal.CAUTION, over));
    }
}
