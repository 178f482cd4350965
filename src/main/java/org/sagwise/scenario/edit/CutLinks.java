package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;

/**
 * Parts joints.
 *
 * @param links their places in the scenario
 */
public record CutLinks(Set<Integer> links) implements Edit {

    public CutLinks {
        links = Set.copyOf(links);
    }

    @Override
    public Scenario apply(Scenario before) {
        List<Link> kept = IntStream.range(0, before.links().size())
                .filter(i -> !links.contains(i))
                .mapToObj(before.links()::get)
                .toList();
        return Kept.withNotes(before.withLinks(kept));
    }

    @Override
    public EditName name(Scenario before) {
        if (links.size() != 1) {
            return EditName.of("cut.many", String.valueOf(links.size()));
        }
        int only = links.iterator().next();
        if (only < 0 || only >= before.links().size()) {
            return EditName.of("cut.many", "0");
        }
        Link link = before.links().get(only);
        return EditName.of(
                "cut.one", EditName.terminalName(before, link.from()), EditName.terminalName(before, link.to()));
    }
}
