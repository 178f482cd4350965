package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Set;
import org.sagwise.part.Role;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Part;
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
                .withEnds(end -> ids.contains(end.part())
                        ? before.part(end.part())
                                .map(part -> opposite(part, end))
                                .orElse(end)
                        : end);
    }

    private static TerminalRef opposite(Part part, TerminalRef end) {
        List<String> all = part.kind().terminals();
        int at = all.indexOf(end.terminal());
        if (at < 0 || end.isCan()) {
            return end;
        }
        // A board turned by half a turn has its other side's other pole here.
        int ends = part.kind().role() == Role.CONVERTER ? all.size() : 2;
        return part.terminal(all.get(ends - 1 - at));
    }

    @Override
    public List<Finding> missing(Scenario before) {
        return Missing.parts(before, ids);
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.ofParts("flip", before, ids);
    }
}
