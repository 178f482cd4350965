package org.sagwise.scenario.edit;

import java.util.Set;
import org.sagwise.scenario.Scenario;

/**
 * Lays copies of parts beside them, with the joints among them.
 *
 * @param ids which parts
 * @param dx how far to the right the copies lie, grid units
 * @param dy how far below, grid units
 */
public record DuplicateParts(Set<String> ids, double dx, double dy) implements Edit {

    public DuplicateParts {
        ids = Set.copyOf(ids);
    }

    @Override
    public Scenario apply(Scenario before) {
        return new PasteParts(Fragment.of(before, ids), dx, dy).apply(before);
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.ofParts("duplicate", before, ids);
    }
}
