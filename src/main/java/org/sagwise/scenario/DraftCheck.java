package org.sagwise.scenario;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;

/**
 * Goes through one draft and collects what is wrong with it, until that is more than anyone wants
 * to know: a hostile file must cost neither minutes nor memory.
 */
final class DraftCheck {

    private final ScenarioRules rules;
    private final Draft draft;
    private final Map<String, PartKind> kinds = new LinkedHashMap<>();
    private final List<Finding> found = new ArrayList<>();

    DraftCheck(ScenarioRules rules, Draft draft) {
        this.rules = rules;
        this.draft = draft;
    }

    List<Finding> findings() {
        sizes();
        if (found.isEmpty()) {
            parts();
            duplicates(draft.parts(), "parts");
            links();
            duplicates(draft.links(), "links");
            probes();
            notes();
            placements();
        }
        return cut();
    }

    private boolean isFull() {
        return found.size() > ScenarioRules.MOST_FINDINGS;
    }

    private List<Finding> cut() {
        if (!isFull()) {
            return found;
        }
        int most = ScenarioRules.MOST_FINDINGS;
        List<Finding> first = new ArrayList<>(found.subList(0, most));
        first.add(Finding.of("", Problem.TOO_MANY_PROBLEMS, String.valueOf(most)));
        return first;
    }

    private void sizes() {
        size("parts", draft.parts().size(), ScenarioKeys.MOST_PARTS, Problem.TOO_MANY_PARTS);
        size("links", draft.links().size(), ScenarioKeys.MOST_LINKS, Problem.TOO_MANY_LINKS);
        size("notes", draft.notes().size(), ScenarioKeys.MOST_NOTES, Problem.TOO_MANY_NOTES);
    }

    private void size(String place, int count, int most, Problem problem) {
        if (count > most) {
            found.add(Finding.of(place, problem, String.valueOf(count), String.valueOf(most)));
        }
    }

    private void parts() {
        for (int i = 0; i < draft.parts().size() && !isFull(); i++) {
            Keys part = draft.parts().get(i);
            found.addAll(rules.part(part, Places.item("parts", i)));
            part.text("id").ifPresent(id -> rememberKind(id, part));
        }
    }

    /** A kind that could not be read is remembered as {@code null}. */
    private void rememberKind(String id, Keys part) {
        kinds.putIfAbsent(id, part.text("kind").flatMap(PartKind::ofWord).orElse(null));
    }

    private void links() {
        for (int i = 0; i < draft.links().size() && !isFull(); i++) {
            found.addAll(rules.link(draft.links().get(i), Places.item("links", i), kinds));
        }
    }

    private void probes() {
        if (draft.probes().isPresent() && !isFull()) {
            Keys keys = draft.probes().get();
            found.addAll(KeyRules.WITHOUT_CATALOGUE.check(keys, ScenarioKeys.PROBES, "probes"));
            found.addAll(PartRules.terminal(keys, "red", "probes", kinds));
            found.addAll(PartRules.terminal(keys, "black", "probes", kinds));
        }
    }

    private void notes() {
        Set<String> linkIds =
                draft.links().stream().flatMap(link -> link.text("id").stream()).collect(Collectors.toSet());
        for (int i = 0; i < draft.notes().size() && !isFull(); i++) {
            Keys note = draft.notes().get(i);
            String place = Places.item("notes", i);
            found.addAll(KeyRules.WITHOUT_CATALOGUE.check(note, ScenarioKeys.NOTE, place));
            note.text("on")
                    .filter(on -> !kinds.containsKey(on) && !linkIds.contains(on))
                    .ifPresent(on -> nothing(Problem.NOTE_ON_NOTHING, on, place + ".on"));
        }
    }

    private void placements() {
        for (Map.Entry<String, Keys> entry : draft.placement().entrySet()) {
            if (isFull()) {
                return;
            }
            String place = Places.key("placement", entry.getKey());
            found.addAll(KeyRules.WITHOUT_CATALOGUE.check(entry.getValue(), ScenarioKeys.PLACEMENT, place));
            if (!kinds.containsKey(entry.getKey())) {
                nothing(Problem.PLACEMENT_OF_NOTHING, entry.getKey(), place);
            }
        }
    }

    private void nothing(Problem problem, String id, String place) {
        found.add(Finding.of(place, problem, id, Places.near(id, kinds.keySet())));
    }

    private void duplicates(List<Keys> objects, String list) {
        Map<String, Integer> first = new HashMap<>();
        for (int i = 0; i < objects.size() && !isFull(); i++) {
            Optional<String> id = objects.get(i).text("id");
            Integer earlier = id.isPresent() ? first.putIfAbsent(id.get(), i) : null;
            if (earlier != null) {
                found.add(Finding.of(
                        Places.key(Places.item(list, i), "id"),
                        Problem.DUPLICATE_ID,
                        id.get(),
                        Places.item(list, earlier)));
            }
        }
    }
}
