package org.sagwise.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Draft;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.ScenarioRules;

/**
 * Turns the object of a scenario file into a {@link Draft} and collects everything that is wrong
 * with it. Used for one file and thrown away.
 */
final class DraftReader {

    /** Keys that hold objects or lists of objects; the others hold a single value. */
    private static final Set<String> STRUCTURE = Set.of("sagwise", "parts", "links", "probes", "notes", "placement");

    /** Longer lists are refused as a whole and need not be read. */
    private static final Map<String, Integer> MOST = Map.of(
            "parts", ScenarioKeys.MOST_PARTS, "links", ScenarioKeys.MOST_LINKS, "notes", ScenarioKeys.MOST_NOTES);

    /** What looks wrong about links and notes only because the parts could not be read. */
    private static final Set<Problem> FOR_WANT_OF_PARTS =
            EnumSet.of(Problem.UNKNOWN_PART, Problem.NOTE_ON_NOTHING, Problem.PLACEMENT_OF_NOTHING);

    private final Node.Group file;
    private final List<Finding> findings = new ArrayList<>();
    private final Set<String> unreadable = new HashSet<>();

    DraftReader(Node.Group file) {
        this.file = file;
    }

    /** Everything found so far; empty if the draft is a scenario. */
    List<Finding> findings() {
        return findings;
    }

    Draft read(ScenarioRules rules) {
        Keys top = top();
        findings.addAll(rules.top(top));
        Draft draft = new Draft(
                top.text("title").orElse(""),
                top.text("about").orElse(""),
                top.number("ambient_C", ScenarioKeys.AMBIENT_C),
                list("parts"),
                list("links"),
                top.flag("fired").orElse(false),
                file.get("probes").flatMap(it -> object(it, "probes")),
                list("notes"),
                placement(),
                top.foreign(),
                List.copyOf(file.entries().keySet()));
        boolean partsMissing = unreadable.stream().anyMatch(place -> place.startsWith("parts"));
        rules.check(draft).stream()
                .filter(finding -> isMeant(finding, partsMissing))
                .forEach(findings::add);
        return draft;
    }

    private Keys top() {
        return file.keys(file.entries().keySet().stream()
                .filter(name -> !STRUCTURE.contains(name))
                .toList());
    }

    private List<Keys> list(String name) {
        Optional<Node> node = file.get(name);
        if (node.isEmpty()) {
            return List.of();
        }
        if (!(node.get() instanceof Node.Items list)) {
            wrongType(name, "list", node.get());
            return List.of();
        }
        List<Node> values = list.items();
        if (values.size() > MOST.getOrDefault(name, values.size())) {
            return Collections.nCopies(values.size(), Keys.NONE);
        }
        List<Keys> objects = new ArrayList<>(values.size());
        for (int i = 0; i < values.size(); i++) {
            objects.add(object(values.get(i), Places.item(name, i)).orElse(Keys.NONE));
        }
        return objects;
    }

    private Map<String, Keys> placement() {
        Map<String, Keys> places = new LinkedHashMap<>();
        Optional<Node> node = file.get("placement");
        if (node.isPresent() && node.get() instanceof Node.Group group) {
            group.entries()
                    .forEach((id, entry) ->
                            object(entry.value(), Places.key("placement", id)).ifPresent(keys -> places.put(id, keys)));
        } else {
            node.ifPresent(it -> wrongType("placement", "object", it));
        }
        return places;
    }

    private Optional<Keys> object(Node value, String place) {
        if (value instanceof Node.Group object) {
            return Optional.of(object.keys());
        }
        note(Finding.of(place, Problem.NOT_AN_OBJECT, Places.typeOf(value.sample())));
        return Optional.empty();
    }

    private void wrongType(String name, String wanted, Node value) {
        note(Finding.of(name, Problem.WRONG_TYPE, wanted, Places.typeOf(value.sample())));
    }

    /** Notes something unreadable, unless there has been more of it than anyone wants to know. */
    private void note(Finding finding) {
        if (findings.size() <= ScenarioRules.MOST_FINDINGS) {
            findings.add(finding);
            unreadable.add(finding.place());
        }
    }

    /** Whether a finding is more than the echo of something unreadable. */
    private boolean isMeant(Finding finding, boolean partsMissing) {
        return !unreadable.contains(finding.place())
                && !(partsMissing && FOR_WANT_OF_PARTS.contains(finding.problem()));
    }
}
