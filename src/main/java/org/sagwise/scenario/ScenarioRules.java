package org.sagwise.scenario;

import org.sagwise.part.Catalogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Says everything that is wrong with a scenario. The one place for it: files, edits and pasted
 * texts are all held against these rules.
 */
public final class ScenarioRules {

    /** After so many findings a file is no longer looked at: the first ones explain it. */
    public static final int MOST_FINDINGS = 1_000;

    private final CatalogueNames names;

    public ScenarioRules(Catalogue catalogue) {
        this.names = new CatalogueNames(catalogue);
    }

    /** Every problem of the keys of the whole file that hold a single value. */
    public List<Finding> top(Keys keys) {
        return new KeyRules(Set.of(), Set.of())
                .check(keys, ScenarioKeys.TOP, "", ScenarioKeys.TOP_ORDER);
    }

    /**
     * Every problem in file order; empty if the draft can become a scenario. Stops with {@link
     * Problem#TOO_MANY_PROBLEMS} after {@link #MOST_FINDINGS}.
     */
    public List<Finding> check(Draft draft) {
        List<Finding> found = sizes(draft);
        if (found.isEmpty()) {
            found.addAll(parts(draft.parts()));
            found.addAll(duplicates(draft.parts(), "parts"));
            Map<String, PartKind> kinds = kindsById(draft.parts());
            found.addAll(links(draft.links(), kinds));
            found.addAll(duplicates(draft.links(), "links"));
            draft.probes().ifPresent(probes -> found.addAll(probes(probes, kinds)));
            found.addAll(notes(draft, kinds.keySet()));
            found.addAll(placements(draft.placement(), kinds.keySet()));
        }
        return cut(found);
    }

    private static List<Finding> sizes(Draft draft) {
        List<Finding> found = new ArrayList<>();
        if (draft.parts().size() > ScenarioKeys.MOST_PARTS) {
            found.add(tooMany("parts", Problem.TOO_MANY_PARTS, draft.parts().size()));
        }
        if (draft.links().size() > ScenarioKeys.MOST_LINKS) {
            found.add(tooMany("links", Problem.TOO_MANY_LINKS, draft.links().size()));
        }
        return found;
    }

    private static List<Finding> cut(List<Finding> found) {
        if (found.size() <= MOST_FINDINGS) {
            return found;
        }
        List<Finding> first = new ArrayList<>(found.subList(0, MOST_FINDINGS));
        first.add(Finding.of("", Problem.TOO_MANY_PROBLEMS, String.valueOf(MOST_FINDINGS)));
        return first;
    }

    private List<Finding> parts(List<Keys> parts) {
        List<Finding> found = new ArrayList<>();
        for (int i = 0; i < parts.size() && found.size() <= MOST_FINDINGS; i++) {
            found.addAll(part(parts.get(i), Places.item("parts", i)));
        }
        return found;
    }

    private List<Finding> links(List<Keys> links, Map<String, PartKind> kinds) {
        List<Finding> found = new ArrayList<>();
        for (int i = 0; i < links.size() && found.size() <= MOST_FINDINGS; i++) {
            found.addAll(link(links.get(i), Places.item("links", i), kinds));
        }
        return found;
    }

    private static Finding tooMany(String place, Problem problem, int count) {
        int most =
                problem == Problem.TOO_MANY_PARTS
                        ? ScenarioKeys.MOST_PARTS
                        : ScenarioKeys.MOST_LINKS;
        return Finding.of(place, problem, String.valueOf(count), String.valueOf(most));
    }

    /** Every problem of one part by itself. */
    public List<Finding> part(Keys keys, String place) {
        Optional<String> word = keys.text("kind");
        Optional<PartKind> kind = word.flatMap(PartKind::ofWord);
        List<KeySpec> specs = new ArrayList<>(ScenarioKeys.ANY_PART);
        if (kind.isEmpty()) {
            return unknownKind(keys, place, word);
        }
        specs.addAll(kind.get().keys());
        List<Finding> found =
                new ArrayList<>(
                        new KeyRules(names.models(kind.get()), names.alloys())
                                .check(keys, specs, place));
        found.addAll(id(keys, place));
        found.addAll(PartRules.check(kind.get(), keys, place));
        return found;
    }

    private static List<Finding> unknownKind(Keys keys, String place, Optional<String> word) {
        List<Finding> found = new ArrayList<>();
        if (keys.has("kind")) {
            found.add(
                    word.isEmpty()
                            ? Finding.of(
                                    Places.key(place, "kind"),
                                    Problem.WRONG_TYPE,
                                    "text",
                                    Places.typeOf(keys.values().get("kind")))
                            : Finding.of(
                                    Places.key(place, "kind"),
                                    Problem.UNKNOWN_KIND,
                                    word.get(),
                                    Places.near(word.get(), PartKind.words()),
                                    String.join(", ", PartKind.words())));
        } else {
            found.add(Finding.of(place, Problem.MISSING_KEY, "kind", "text"));
        }
        if (!keys.has("id")) {
            found.add(Finding.of(place, Problem.MISSING_KEY, "id", "text"));
        }
        found.addAll(id(keys, place));
        return found;
    }

    private static List<Finding> id(Keys keys, String place) {
        return keys.text("id")
                .filter(id -> !id.matches(ScenarioKeys.ID_PATTERN))
                .map(id -> List.of(Finding.of(Places.key(place, "id"), Problem.BAD_ID, id)))
                .orElse(List.of());
    }

    private List<Finding> link(Keys keys, String place, Map<String, PartKind> kinds) {
        List<Finding> found =
                new ArrayList<>(
                        new KeyRules(Set.of(), names.alloys())
                                .check(keys, ScenarioKeys.LINK, place));
        found.addAll(id(keys, place));
        found.addAll(PartRules.joint(keys, place));
        found.addAll(PartRules.terminal(keys, "from", place, kinds));
        found.addAll(PartRules.terminal(keys, "to", place, kinds));
        if (keys.text("from").isPresent() && keys.text("from").equals(keys.text("to"))) {
            found.add(Finding.of(place, Problem.SELF_LINK, keys.text("from").get()));
        }
        return found;
    }

    private List<Finding> probes(Keys keys, Map<String, PartKind> kinds) {
        List<Finding> found =
                new ArrayList<>(
                        new KeyRules(Set.of(), Set.of())
                                .check(keys, ScenarioKeys.PROBES, "probes"));
        found.addAll(PartRules.terminal(keys, "red", "probes", kinds));
        found.addAll(PartRules.terminal(keys, "black", "probes", kinds));
        return found;
    }

    private static List<Finding> notes(Draft draft, Set<String> partIds) {
        List<Finding> found = new ArrayList<>();
        Set<String> linkIds =
                draft.links().stream()
                        .flatMap(link -> link.text("id").stream())
                        .collect(Collectors.toSet());
        for (int i = 0; i < draft.notes().size() && found.size() <= MOST_FINDINGS; i++) {
            Keys note = draft.notes().get(i);
            String place = Places.item("notes", i);
            found.addAll(new KeyRules(Set.of(), Set.of()).check(note, ScenarioKeys.NOTE, place));
            note.text("on")
                    .filter(on -> !partIds.contains(on) && !linkIds.contains(on))
                    .ifPresent(
                            on ->
                                    found.add(
                                            Finding.of(
                                                    Places.key(place, "on"),
                                                    Problem.NOTE_ON_NOTHING,
                                                    on,
                                                    Places.near(on, partIds))));
        }
        return found;
    }

    private static List<Finding> placements(Map<String, Keys> placement, Set<String> partIds) {
        List<Finding> found = new ArrayList<>();
        placement.forEach(
                (id, keys) -> {
                    if (found.size() > MOST_FINDINGS) {
                        return;
                    }
                    String place = Places.key("placement", id);
                    found.addAll(
                            new KeyRules(Set.of(), Set.of())
                                    .check(keys, ScenarioKeys.PLACEMENT, place));
                    if (!partIds.contains(id)) {
                        found.add(
                                Finding.of(
                                        place,
                                        Problem.PLACEMENT_OF_NOTHING,
                                        id,
                                        Places.near(id, partIds)));
                    }
                });
        return found;
    }

    private static List<Finding> duplicates(List<Keys> objects, String list) {
        List<Finding> found = new ArrayList<>();
        Map<String, Integer> first = new HashMap<>();
        for (int i = 0; i < objects.size(); i++) {
            Optional<String> id = objects.get(i).text("id");
            if (id.isPresent()) {
                Integer earlier = first.putIfAbsent(id.get(), i);
                if (earlier != null) {
                    found.add(
                            Finding.of(
                                    Places.key(Places.item(list, i), "id"),
                                    Problem.DUPLICATE_ID,
                                    id.get(),
                                    Places.item(list, earlier)));
                }
            }
        }
        return found;
    }

    /** Ids with their kinds; a kind that could not be read is there as {@code null}. */
    private static Map<String, PartKind> kindsById(List<Keys> parts) {
        Map<String, PartKind> kinds = new LinkedHashMap<>();
        for (Keys part : parts) {
            part.text("id")
                    .ifPresent(
                            id ->
                                    kinds.putIfAbsent(
                                            id,
                                            part.text("kind")
                                                    .flatMap(PartKind::ofWord)
                                                    .orElse(null)));
        }
        return kinds;
    }
}
