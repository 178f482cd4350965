package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;

/**
 * Takes every joint of some parts away and leaves the parts where they lie.
 *
 * @param ids which parts
 */
public record FreeParts(Set<String> ids) implements Edit {

    public FreeParts {
        ids = Set.copyOf(ids);
    }

    @Override
    public Scenario apply(Scenario before) {
        return new CutLinks(IntStream.range(0, before.links().size())
                        .filter(i -> ids.stream().anyMatch(before.links().get(i)::touches))
                        .boxed()
                        .collect(Collectors.toSet()))
                .apply(before);
    }

    @Override
    public List<Finding> missing(Scenario before) {
        return Missing.parts(before, ids);
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.ofParts("free", before, ids);
    }
}
