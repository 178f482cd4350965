package org.sagwise.scenario.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Lets two parts with the same terminals change places: each lies where the other lay and is joined to what the
 * other was joined to. Probes stay where they are, so they come to the other part.
 */
public record SwapParts(String one, String other) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        if (!missing(before).isEmpty()) {
            return before;
        }
        Map<String, Placement> places = new LinkedHashMap<>();
        before.placement().forEach((id, place) -> places.put(swapped(id), place));
        return before.withPlacement(places).withEnds(end -> new TerminalRef(swapped(end.part()), end.terminal()));
    }

    private String swapped(String id) {
        return id.equals(one) ? other : id.equals(other) ? one : id;
    }

    @Override
    public List<Finding> missing(Scenario before) {
        List<Finding> missing = Missing.parts(before, List.of(one, other));
        return missing.isEmpty() ? strangers(before) : missing;
    }

    /** Terminals of the one that the other does not have. */
    private List<Finding> strangers(Scenario before) {
        return Missing.terminals(
                before,
                Stream.of(one, other)
                        .flatMap(id -> before.part(id).orElseThrow().terminals().stream())
                        .map(end -> new TerminalRef(swapped(end.part()), end.terminal()))
                        .toList());
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("swap", EditName.partName(before, one), EditName.partName(before, other));
    }
}
