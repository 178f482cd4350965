package org.sagwise.scenario.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
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
        List<Integer> joints = IntStream.range(0, before.links().size())
                .filter(i -> ids.stream().anyMatch(before.links().get(i)::touches))
                .boxed()
                .toList();
        Scenario cut = new CutLinks(Set.copyOf(joints)).apply(before);
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
    public EditName name(Scenario before) {
        return EditName.ofParts("delete", before, ids);
    }
}
