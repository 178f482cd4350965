package org.sagwise.caution;

import java.util.List;
import org.sagwise.scenario.PartKind;

/**
 * A switch that cannot open: the device fires although nobody presses. Where no current comes of
 * it, yet, it is a NOTICE. One that cannot close shows as an open circuit.
 */
final class SwitchStuck implements HazardRule {
    static final String ID = "switch-stuck";

    @Override
    public List<Caution> check(Evidence evidence) {
        return evidence.bench().scenario().partsOf(PartKind.SWITCH).stream()
                .filter(part -> part.keys().text("stuck").orElse("").equals("closed"))
                .map(part -> caution(evidence, part.id()))
                .toList();
    }

    private static Caution caution(Evidence evidence, String id) {
        double currentA = Math.abs(evidence.atRest().currentA(id));
        boolean quiet = currentA < Look.NO_CURRENT_A;
        return new CautionBuilder(evidence, ID, quiet ? Signal.NOTICE : Signal.WARNING)
                .when(quiet ? Caution.When.ALWAYS : Caution.When.AT_REST)
                .parts(id)
                .measured(currentA, 0, "A")
                .variant(quiet ? "quiet" : "current")
                .build();
    }
}
