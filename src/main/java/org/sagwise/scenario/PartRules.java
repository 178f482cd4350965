package org.sagwise.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;

/** The rules of a part or a link that span several of its keys. */
public final class PartRules {

    private PartRules() {}

    /** Every clash or gap among keys, their nested objects included. */
    public static List<Finding> check(List<KeyRule> rules, List<KeySpec> specs, Keys keys, String place) {
        List<Finding> found = new ArrayList<>();
        rules.forEach(rule -> found.addAll(check(rule, keys, place)));
        for (KeySpec spec : specs) {
            if (spec.type() instanceof KeySpec.GroupType group) {
                keys.group(spec.name())
                        .ifPresent(inner -> found.addAll(
                                check(group.rules(), group.keys(), inner, Places.key(place, spec.name()))));
            }
        }
        return found;
    }

    private static List<Finding> check(KeyRule rule, Keys keys, String place) {
        if (rule instanceof KeyRule.ExactlyOne one) {
            return exactlyOne(keys, place, one.names());
        } else if (rule instanceof KeyRule.OneOrModel one) {
            return one.names().stream().anyMatch(keys::has)
                    ? exactlyOne(keys, place, one.names())
                    : exactlyOne(keys, place, and(one.names(), "model"));
        } else if (rule instanceof KeyRule.Together both) {
            return together(keys, place, both.one(), both.other());
        } else if (rule instanceof KeyRule.Ordered ordered) {
            return ordered(keys, place, ordered.low(), ordered.high());
        } else if (rule instanceof KeyRule.ModelOr needed) {
            return modelOr(keys, place, needed.names());
        }
        return List.of();
    }

    /** What is wrong with the joint of a link. */
    static List<Finding> joint(Keys link, String place) {
        List<Finding> found = new ArrayList<>(check(ScenarioKeys.LINK_RULES, ScenarioKeys.LINK, link, place));
        if (link.flag("ideal").equals(Optional.of(false))) {
            found.add(Finding.of(Places.key(place, "ideal"), Problem.NOT_A_CHOICE, "false", "true"));
        }
        return found;
    }

    private static List<Finding> modelOr(Keys keys, String place, List<String> names) {
        if (keys.has("model")) {
            return List.of();
        }
        List<String> missing = names.stream().filter(name -> !keys.has(name)).toList();
        return missing.isEmpty()
                ? List.of()
                : List.of(Finding.of(place, Problem.NEEDS_MODEL_OR, String.join(", ", missing)));
    }

    private static List<Finding> exactlyOne(Keys keys, String place, List<String> names) {
        List<String> there = names.stream().filter(keys::has).toList();
        if (there.isEmpty()) {
            return List.of(Finding.of(place, Problem.NEEDS_ONE_OF, String.join(", ", names)));
        }
        return there.size() == 1 ? List.of() : List.of(Finding.of(place, Problem.CLASH, String.join(", ", there)));
    }

    private static List<String> and(List<String> names, String another) {
        return Stream.concat(names.stream(), Stream.of(another)).toList();
    }

    private static List<Finding> together(Keys keys, String place, String one, String other) {
        if (keys.has(one) == keys.has(other)) {
            return List.of();
        }
        String there = keys.has(one) ? one : other;
        String missing = keys.has(one) ? other : one;
        return List.of(Finding.of(place, Problem.NEEDS_TOGETHER, there, missing));
    }

    private static List<Finding> ordered(Keys keys, String place, String low, String high) {
        if (keys.number(low).isEmpty() || keys.number(high).isEmpty()) {
            return List.of();
        }
        return keys.number(low, 0) < keys.number(high, 0)
                ? List.of()
                : List.of(Finding.of(place, Problem.UPSIDE_DOWN, low, high));
    }

    /** Names a link end that leads nowhere. */
    static List<Finding> terminal(Keys keys, String name, String place, Map<String, PartKind> parts) {
        return keys.text(name)
                .flatMap(TerminalRef::parse)
                .map(terminal -> terminal(terminal, Places.key(place, name), parts))
                .orElse(List.of());
    }

    static List<Finding> terminal(TerminalRef terminal, String place, Map<String, PartKind> parts) {
        PartKind kind = parts.get(terminal.part());
        return kind == null || kind.terminals().contains(terminal.terminal())
                ? part(terminal.part(), place, parts.keySet())
                : List.of(Finding.of(
                        place,
                        Problem.UNKNOWN_TERMINAL,
                        terminal.part(),
                        terminal.terminal(),
                        String.join(", ", kind.terminals())));
    }

    static List<Finding> part(String id, String place, Set<String> ids) {
        return ids.contains(id)
                ? List.of()
                : List.of(Finding.of(place, Problem.UNKNOWN_PART, id, Places.near(id, ids), Places.row(ids)));
    }
}
