package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Set;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Takes parts out and puts them back end for end: whatever touched one end now touches the other.
 * This is how a cell gets reversed. Probes stay where they are, so they come to the other end too.
 *
 * @param ids which parts
 */
public record FlipParts(Set<String> ids) implements Edit {

    private static final double HALF_TURN = 180;

    public FlipParts {
        ids = Set.copyOf(ids);
    }

    @Override
    public Scenario apply(Scenario before) {
        return before.withPlacement(Places.turned(before.placement(), ids, HALF_TURN))
                .withLinks(before.links().stream()
                        .map(link -> flipped(before, link))
                        .toList())
                .withProbes(before.probes().map(probes -> Probes.of(flipped(before, probes.keys(), "red", "black"))));
    }

    private Link flipped(Scenario scenario, Link link) {
        boolean touched =
                ids.contains(link.from().part()) || ids.contains(link.to().part());
        return touched ? Link.of(flipped(scenario, link.keys(), "from", "to")) : link;
    }

    private Keys flipped(Scenario scenario, Keys keys, String one, String other) {
        return keys.with(one, flipped(scenario, keys, one)).with(other, flipped(scenario, keys, other));
    }

    private String flipped(Scenario scenario, Keys keys, String name) {
        TerminalRef end = keys.text(name).flatMap(TerminalRef::parse).orElseThrow();
        return (ids.contains(end.part())
                        ? scenario.part(end.part())
                                .map(part -> opposite(part, end))
                                .orElse(end)
                        : end)
                .toString();
    }

    private static TerminalRef opposite(Part part, TerminalRef end) {
        List<String> all = part.kind().terminals();
        int at = all.indexOf(end.terminal());
        if (at < 0 || end.isCan()) {
            return end;
        }
        // A board turned by half a turn has its other side's other pole here.
        int ends = part.kind() == PartKind.BOARD ? all.size() : 2;
        return part.terminal(all.get(ends - 1 - at));
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.ofParts("flip", before, ids);
    }
}
