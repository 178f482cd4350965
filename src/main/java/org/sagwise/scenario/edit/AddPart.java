package org.sagwise.scenario.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/**
 * Lays one more part on the bench.
 *
 * @param part the part; if its id is taken it gets another
 * @param place where it lies
 */
public record AddPart(Part part, Placement place) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        if (before.parts().size() >= ScenarioKeys.MOST_PARTS) {
            return before;
        }
        Part added = part.with("id", new FreshIds(before).like(part.id()));
        Map<String, Placement> places = new LinkedHashMap<>(before.placement());
        places.put(added.id(), Places.at(place, place.x(), place.y()));
        return before.plus(added).withPlacement(places);
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("add." + part.kind().word());
    }
}
