package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.sagwise.circuit.Branch;
import org.sagwise.circuit.Climb;
import org.sagwise.circuit.Loop;
import org.sagwise.circuit.Netlist;
import org.sagwise.part.ChargerSpec;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;

/**
 * A charger and the cells that it charges.
 *
 * @param charger the charger
 * @param climb the cells that are passed from its minus to its plus
 */
record ChargerClimb(Part charger, List<Loop.Step> climb) {

    /** What a charger may be off for each cell, V: 4.20 ± 0.05 V, typical, from memory. */
    static final double SLACK_V = 0.05;

    /** Chargers that go on to a voltage above that of the full cells: they do not stop in time. */
    static List<CautionBuilder> tooHigh(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        for (ChargerClimb each : all(context)) {
            double fullV = each.fullV(context);
            double limitV = context.spec(each.charger.id(), ChargerSpec.class).limitV();
            if (!each.isReversed() && limitV > fullV + SLACK_V * each.climb.size()) {
                found.add(each.caution(context).measured(limitV, fullV, "V"));
            }
        }
        return found;
    }

    /** Chargers that are joined the wrong way round. */
    static List<CautionBuilder> reversed(HazardContext context) {
        return all(context).stream()
                .filter(ChargerClimb::isReversed)
                .map(each -> each.caution(context))
                .toList();
    }

    private static List<ChargerClimb> all(HazardContext context) {
        List<ChargerClimb> all = new ArrayList<>();
        Netlist circuit = context.held().circuit();
        for (Part charger : context.partsOf(PartKind.CHARGER)) {
            Branch branch = circuit.branch(charger.id()).orElseThrow();
            Optional<List<Loop.Step>> climb = Climb.between(circuit, branch.to(), branch.from());
            climb.ifPresent(steps -> all.add(new ChargerClimb(charger, steps)));
        }
        return all;
    }

    private boolean isReversed() {
        return climb.stream().mapToInt(Loop.Step::up).sum() < 0;
    }

    private List<String> cells() {
        return climb.stream().map(step -> step.source().part()).toList();
    }

    private double fullV(HazardContext context) {
        return cells().stream()
                .map(context.held()::cell)
                .filter(Objects::nonNull)
                .mapToDouble(cell -> cell.spec().fullV())
                .sum();
    }

    private CautionBuilder caution(HazardContext context) {
        return new CautionBuilder(context, Signal.WARNING).parts(charger.id()).parts(cells());
    }
}
