package org.sagwise.scenario.edit;

import java.util.Set;
import org.sagwise.scenario.Scenario;

/**
 * Turns parts where they lie. Their joints go with them, so nothing changes in the circuit.
 *
 * @param ids which parts
 * @param quarters how often by a quarter, clockwise; negative for the other way
 */
public record TurnParts(Set<String> ids, int quarters) implements Edit {

    private static final double QUARTER = 90;

    public TurnParts {
        ids = Set.copyOf(ids);
    }

    @Override
    public Scenario apply(Scenario before) {
        return before.withPlacement(Places.turned(before.placement(), ids, quarters * QUARTER));
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.ofParts("turn", before, ids);
    }
}
