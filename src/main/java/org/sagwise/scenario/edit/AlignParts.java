package org.sagwise.scenario.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;

/**
 * Brings the middles of parts into one line, through the middle of where they lie now.
 *
 * @param ids which parts
 * @param line which way the line runs
 */
public record AlignParts(Set<String> ids, Line line) implements Edit {

    /** Which way a line runs. */
    public enum Line {
        ROW,
        COLUMN
    }

    public AlignParts {
        ids = Set.copyOf(ids);
    }

    @Override
    public Scenario apply(Scenario before) {
        List<Placement> old = ids.stream()
                .map(before.placement()::get)
                .filter(Objects::nonNull)
                .toList();
        if (old.isEmpty()) {
            return before;
        }
        double x = Math.rint(old.stream().mapToDouble(Placement::x).average().orElseThrow());
        double y = Math.rint(old.stream().mapToDouble(Placement::y).average().orElseThrow());
        Map<String, Placement> places = new LinkedHashMap<>(before.placement());
        ids.forEach(id -> places.computeIfPresent(
                id,
                (same, place) -> line == Line.ROW ? Places.at(place, place.x(), y) : Places.at(place, x, place.y())));
        return before.withPlacement(places);
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.ofParts("align", before, ids);
    }
}
