package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.caution.circuit.Branch;
import org.sagwise.caution.circuit.Circuit;
import org.sagwise.caution.circuit.Climb;
import org.sagwise.caution.circuit.Loop;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;

/**
 * A charger goes on to a voltage above that of the full cells it is joined to: it does not stop in
 * time. Or it is joined the wrong way round.
 */
final class ChargerTooHigh implements HazardRule {
    static final String ID = "charger-too-high";
    static final String REVERSED_ID = "charger-reversed";

    /** What a charger may be off for each cell, V: 4.20 ± 0.05 V, typical, from memory. */
    static final double SLACK_V = 0.05;

    @Override
    public List<Caution> check(HazardContext context) {
        List<Caution> found = new ArrayList<>();
        Circuit circuit = context.held().circuit();
        for (Part charger : context.bench().scenario().partsOf(PartKind.CHARGER)) {
            Branch branch = circuit.branch(charger.id()).orElseThrow();
            Climb.between(circuit, branch.to(), branch.from())
                    .flatMap(climb -> caution(context, charger, climb))
                    .ifPresent(found::add);
        }
        return found;
    }

    private static Optional<Caution> caution(HazardContext context, Part charger, List<Loop.Step> climb) {
        List<String> cells = climb.stream().map(step -> step.source().part()).toList();
        if (climb.stream().mapToInt(Loop.Step::up).sum() < 0) {
            return Optional.of(new CautionBuilder(context, REVERSED_ID, Signal.WARNING)
                    .parts(charger.id())
                    .parts(cells)
                    .build());
        }
        double fullV = cells.stream()
                .filter(context.bench().cells()::containsKey)
                .mapToDouble(id -> context.spec(id).fullV())
                .sum();
        double limitV = context.charger(charger).limitV();
        return limitV > fullV + SLACK_V * cells.size()
                ? Optional.of(new CautionBuilder(context, ID, Signal.WARNING)
                        .parts(charger.id())
                        .parts(cells)
                        .measured(limitV, fullV, "V")
                        .build())
                : Optional.empty();
    }
}
