package org.sagwise.scenario.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.TerminalRef;

/**
 * Lays the parts of another scenario beside those that are there, with the joints among them. Ids
 * that are taken give way to fresh ones.
 *
 * @param fragment what is laid down
 * @param dx how far to the right of where it lay, grid units
 * @param dy how far below, grid units
 */
public record PasteParts(Scenario fragment, double dx, double dy) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        if (before.parts().size() + fragment.parts().size() > ScenarioKeys.MOST_PARTS
                || before.links().size() + fragment.links().size() > ScenarioKeys.MOST_LINKS
                || before.notes().size() + fragment.notes().size() > ScenarioKeys.MOST_NOTES) {
            return before;
        }
        FreshIds fresh = new FreshIds(before);
        Map<String, String> ids = new LinkedHashMap<>();
        fragment.parts().forEach(part -> ids.put(part.id(), fresh.copyOf(part)));
        Map<String, String> linkIds = new HashMap<>();
        fragment.links().stream()
                .flatMap(link -> link.id().stream())
                .forEach(id -> linkIds.computeIfAbsent(id, fresh::like));
        List<Part> parts = new ArrayList<>(before.parts());
        fragment.parts().forEach(part -> parts.add(part.with("id", ids.get(part.id()))));
        List<Link> links = new ArrayList<>(before.links());
        fragment.links().forEach(link -> links.add(renamed(link, ids, linkIds)));
        List<Note> notes = new ArrayList<>(before.notes());
        fragment.notes().forEach(note -> notes.add(renamed(note, ids, linkIds)));
        Map<String, Placement> places = new LinkedHashMap<>(before.placement());
        fragment.placement().forEach((id, place) -> places.put(ids.get(id), Places.moved(place, dx, dy)));
        return before.withParts(parts).withLinks(links).withNotes(notes).withPlacement(places);
    }

    private static Link renamed(Link link, Map<String, String> ids, Map<String, String> linkIds) {
        Link there = link.between(renamed(link.from(), ids), renamed(link.to(), ids));
        return link.id()
                .map(id -> Link.of(there.keys().with("id", linkIds.get(id))))
                .orElse(there);
    }

    private static TerminalRef renamed(TerminalRef end, Map<String, String> ids) {
        return new TerminalRef(ids.get(end.part()), end.terminal());
    }

    private static Note renamed(Note note, Map<String, String> ids, Map<String, String> linkIds) {
        String on = ids.getOrDefault(note.on(), linkIds.get(note.on()));
        return Note.of(note.keys().with("on", on));
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.ofParts(
                "paste", fragment, fragment.parts().stream().map(Part::id).toList());
    }
}
