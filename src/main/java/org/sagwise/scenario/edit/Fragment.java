package org.sagwise.scenario.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/** Takes some parts out of a scenario as a scenario of its own: what is copied and shared. */
public final class Fragment {

    private static final Map<String, Object> MARK = Map.of("sagwise", "parts");

    private Fragment() {}

    /** These parts, the joints among them, their notes and places. */
    public static Scenario of(Scenario whole, Set<String> ids) {
        Map<String, Placement> places = new LinkedHashMap<>(whole.placement());
        places.keySet().retainAll(ids);
        Scenario fragment = Scenario.of(
                        whole.title(),
                        whole.parts().stream()
                                .filter(part -> ids.contains(part.id()))
                                .toList(),
                        whole.links().stream()
                                .filter(link -> ids.contains(link.from().part())
                                        && ids.contains(link.to().part()))
                                .toList())
                .withAmbientC(whole.ambientC())
                .withPlacement(places);
        Set<String> linkIds = fragment.links().stream()
                .map(link -> link.id())
                .flatMap(Optional::stream)
                .collect(Collectors.toSet());
        return fragment.withNotes(whole.notes().stream()
                .filter(note -> ids.contains(note.on()) || linkIds.contains(note.on()))
                .toList());
    }

    /** The same, saying of itself that it is a part of a bench and not a whole one. */
    public static Scenario marked(Scenario fragment) {
        return new Scenario(
                fragment.title(),
                fragment.about(),
                fragment.ambientC(),
                fragment.parts(),
                fragment.links(),
                fragment.fired(),
                fragment.probes(),
                fragment.notes(),
                fragment.placement(),
                Optional.of(MARK),
                ScenarioKeys.TOP_ORDER);
    }

    /** Whether a scenario says of itself that it is a part of a bench. */
    public static boolean isMarked(Scenario scenario) {
        return scenario.foreign().equals(Optional.of(MARK));
    }
}
