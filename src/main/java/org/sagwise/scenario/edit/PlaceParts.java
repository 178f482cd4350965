package org.sagwise.scenario.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;

/**
 * Puts parts somewhere else.
 *
 * @param places new places by id; those of parts that are not there are left out
 */
public record PlaceParts(Map<String, Placement> places) implements Edit {

    public PlaceParts {
        places = Map.copyOf(places);
    }

    @Override
    public Scenario apply(Scenario before) {
        Map<String, Placement> all = new LinkedHashMap<>(before.placement());
        before.parts().stream()
                .map(part -> part.id())
                .filter(places::containsKey)
                .forEach(id -> all.put(id, inside(places.get(id))));
        return before.withPlacement(all);
    }

    private static Placement inside(Placement place) {
        return Places.at(place, place.x(), place.y());
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.ofParts("move", before, places.keySet());
    }
}
