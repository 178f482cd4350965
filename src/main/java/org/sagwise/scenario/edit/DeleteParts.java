package org.sagwise.scenario.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;

/**
 * Takes parts off the bench with everything that is joined to them, notes and probes included.
 *
 * @param ids which parts
 */
public record DeleteParts(Set<String> ids) implements Edit {

    public DeleteParts {
        ids = Set.copyOf(ids);
    }

    @Override
    public Scenario apply(Scenario before) {
        Scenario cut = new FreeParts(ids).apply(before);
        Map<String, Placement> places = new LinkedHashMap<>(cut.placement());
        places.keySet().removeAll(ids);
        return Kept.withNotes(cut.withParts(cut.parts().stream()
                        .filter(part -> !ids.contains(part.id()))
                        .toList())
                .withPlacement(places)
                .withProbes(cut.probes()
                        .filter(probes -> !ids.contains(probes.red().part())
                                && !ids.contains(probes.black().part()))));
    }

    @Override
    public List<Finding> missing(Scenario before) {
        return Missing.parts(before, ids);
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.ofParts("delete", before, ids);
    }
}
