package org.sagwise.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.part.key.Keys;

/**
 * A scenario as read, before anyone knows whether it holds together: objects of keys only. {@link
 * ScenarioRules} says what is wrong with it; one without findings becomes a {@link Scenario}.
 *
 * @param title title, or empty
 * @param about text, or empty
 * @param ambientC °C, or the default
 * @param parts keys of the parts in file order
 * @param links keys of the links in file order
 * @param fired whether the switches are pressed
 * @param probes keys of the probes
 * @param notes keys of the notes
 * @param placement keys of the places by part id
 * @param foreign data of other tools
 * @param keyOrder names of the top-level keys in file order
 */
public record Draft(
        String title,
        String about,
        double ambientC,
        List<Keys> parts,
        List<Keys> links,
        boolean fired,
        Optional<Keys> probes,
        List<Keys> notes,
        Map<String, Keys> placement,
        Optional<Object> foreign,
        List<String> keyOrder) {

    /** The same with these links. */
    Draft withLinks(List<Keys> others) {
        return new Draft(title, about, ambientC, parts, others, fired, probes, notes, placement, foreign, keyOrder);
    }

    /** The scenario that this is a draft of; only to be called when the rules found nothing. */
    Scenario toScenario() {
        Map<String, Placement> places = new LinkedHashMap<>();
        placement.forEach((id, keys) -> places.put(id, Placement.of(keys)));
        return new Scenario(
                title,
                about,
                ambientC,
                parts.stream().map(Part::of).toList(),
                links.stream().map(Link::of).toList(),
                fired,
                probes.map(Probes::of),
                notes.stream().map(Note::of).toList(),
                places,
                foreign,
                keyOrder);
    }

    /** The draft that this scenario would be read from. */
    public static Draft of(Scenario scenario) {
        Map<String, Keys> places = new LinkedHashMap<>();
        scenario.placement().forEach((id, place) -> places.put(id, place.keys()));
        return new Draft(
                scenario.title(),
                scenario.about(),
                scenario.ambientC(),
                scenario.parts().stream().map(Part::keys).toList(),
                scenario.links().stream().map(Link::keys).toList(),
                scenario.fired(),
                scenario.probes().map(Probes::keys),
                scenario.notes().stream().map(Note::keys).toList(),
                places,
                scenario.foreign(),
                scenario.keyOrder());
    }
}
