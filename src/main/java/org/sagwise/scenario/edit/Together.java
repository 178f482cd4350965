package org.sagwise.scenario.edit;

import java.util.List;
import org.sagwise.scenario.Scenario;

/**
 * Several edits that a person takes for one, one after the other.
 *
 * @param edits at least one; all are called by the first
 */
public record Together(List<Edit> edits) implements Edit {

    public Together {
        edits = List.copyOf(edits);
        if (edits.isEmpty()) {
            throw new IllegalArgumentException("nothing to do");
        }
    }

    @Override
    public Scenario apply(Scenario before) {
        Scenario after = before;
        for (Edit edit : edits) {
            after = edit.apply(after);
        }
        return after;
    }

    @Override
    public EditName name(Scenario before) {
        return edits.get(0).name(before);
    }
}
