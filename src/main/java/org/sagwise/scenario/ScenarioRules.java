package org.sagwise.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;

/**
 * Says everything that is wrong with a scenario. The one place for it: files, edits and pasted
 * texts are all held against these rules.
 */
public final class ScenarioRules {

    private static final Pattern ID = Pattern.compile(ScenarioKeys.ID_PATTERN);

    /** After so many findings a file is no longer looked at: the first ones explain it. */
    public static final int MOST_FINDINGS = 1_000;

    private final CatalogueNames names;
    private final NamedJoints joints;

    public ScenarioRules(Catalogue catalogue) {
        this.names = new CatalogueNames(catalogue);
        this.joints = new NamedJoints(catalogue);
    }

    /** Every problem of the keys of the whole file that hold a single value. */
    public List<Finding> top(Keys keys) {
        return KeyRules.WITHOUT_CATALOGUE.check(keys, ScenarioKeys.TOP, "", ScenarioKeys.TOP_ORDER);
    }

    /**
     * Every problem in file order; empty if the draft can become a scenario. Stops with {@link
     * Problem#TOO_MANY_PROBLEMS} after {@link #MOST_FINDINGS}.
     */
    public List<Finding> check(Draft draft) {
        return new DraftCheck(this, draft).findings();
    }

    /** The scenario of a draft in which {@link #check} found nothing: joints named by a model have its numbers. */
    public Scenario scenario(Draft draft) {
        return draft.withLinks(draft.links().stream().map(joints::filled).toList())
                .toScenario();
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
                new ArrayList<>(new KeyRules(names.models(kind.get()), names.alloys()).check(keys, specs, place));
        found.replaceAll(this::ofAnotherKind);
        found.addAll(id(keys, place));
        found.addAll(PartRules.check(
                kind.get().descriptor().keys().rules(), kind.get().keys(), keys, place));
        return found;
    }

    /** A model that is unknown here may be one of another family: then that is what is told. */
    private Finding ofAnotherKind(Finding found) {
        if (found.problem() != Problem.UNKNOWN_MODEL) {
            return found;
        }
        String id = found.details().get(0);
        return names.kindOf(id)
                .map(kind -> new Finding(
                        found.place(),
                        found.position(),
                        Problem.MODEL_OF_ANOTHER_KIND,
                        List.of(id, kind.word(), found.details().get(2))))
                .orElse(found);
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

    static List<Finding> id(Keys keys, String place) {
        return keys.text("id")
                .filter(id -> !ID.matcher(id).matches())
                .map(id -> List.of(Finding.of(Places.key(place, "id"), Problem.BAD_ID, id)))
                .orElse(List.of());
    }

    /** What is wrong with the name of a part of a bench; nothing if it is there. */
    public static List<Finding> unknownPart(String id, Scenario bench) {
        return PartRules.part(id, "", kinds(bench).keySet());
    }

    /** What is wrong with the name of a terminal of a bench; nothing if it is there. */
    public static List<Finding> unknownTerminal(TerminalRef terminal, Scenario bench) {
        return PartRules.terminal(terminal, "", kinds(bench));
    }

    private static Map<String, PartKind> kinds(Scenario bench) {
        Map<String, PartKind> kinds = new LinkedHashMap<>();
        bench.parts().forEach(part -> kinds.put(part.id(), part.kind()));
        return kinds;
    }

    /** Every problem of one link, given what its ends may lie on. */
    List<Finding> link(Keys keys, String place, Map<String, PartKind> kinds) {
        List<Finding> found =
                new ArrayList<>(new KeyRules(joints.ids(), names.alloys()).check(keys, ScenarioKeys.LINK, place));
        found.addAll(id(keys, place));
        found.addAll(PartRules.joint(keys, place));
        found.addAll(joints.clashes(keys, place));
        found.addAll(PartRules.terminal(keys, "from", place, kinds));
        found.addAll(PartRules.terminal(keys, "to", place, kinds));
        if (keys.text("from").isPresent() && keys.text("from").equals(keys.text("to"))) {
            found.add(Finding.of(place, Problem.SELF_LINK, keys.text("from").get()));
        }
        return found;
    }
}
