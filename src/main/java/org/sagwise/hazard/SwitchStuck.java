package org.sagwise.hazard;

import java.util.List;
import org.sagwise.part.PartKind;

/**
 * A switch that cannot open: the device fires although nobody presses. Where no current comes of
 * it, yet, it is a NOTICE. One that cannot close shows as an open circuit.
 */
final class SwitchStuck implements HazardRule {
    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.partsOf(PartKind.SWITCH).stream()
                .filter(part -> context.bench()
                        .values(part.id())
                        .word("stuck")
                        .orElse("")
                        .equals("closed"))
                .map(part -> caution(context, part.id()))
                .toList();
    }

    private static CautionBuilder caution(HazardContext context, String id) {
        double currentA = Math.abs(context.atRest().currentA(id));
        boolean quiet = currentA < SwitchView.NO_CURRENT_A;
        return new CautionBuilder(context, quiet ? Signal.NOTICE : Signal.WARNING)
                .when(quiet ? Caution.When.ALWAYS : Caution.When.AT_REST)
                .parts(id)
                .measured(currentA, 0, "A")
                .variant(quiet ? "quiet" : "current");
    }
}
