package org.sagwise.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;

/** The rules of a part or a link that span several of its keys. */
final class PartRules {

    private static final String[] CELL_VALUES = {"internal_mohm", "capacity_mAh", "limit_A"};

    private PartRules() {}

    /** Every clash or gap among the keys of one part. */
    static List<Finding> check(PartKind kind, Keys keys, String place) {
        return switch (kind) {
            case CELL -> cell(keys, place);
            case COIL -> coil(keys, place);
            case FUSE -> modelOr(keys, place, "rating_A");
            case BOARD -> board(keys, place);
            case CHARGER -> modelOr(keys, place, "current_A");
            case SWITCH, SUPPLY, RESISTOR, METER -> List.of();
        };
    }

    private static List<Finding> cell(Keys keys, String place) {
        List<Finding> found = new ArrayList<>(modelOr(keys, place, CELL_VALUES));
        found.addAll(exactlyOne(keys, place, "charge", "rest_V"));
        found.addAll(together(keys, place, "pulse_A", "pulse_s"));
        found.addAll(ordered(keys, place, "cutoff_V", "full_V"));
        return found;
    }

    private static List<Finding> coil(Keys keys, String place) {
        List<Finding> found = new ArrayList<>(exactlyOne(keys, place, "ohm", "wire"));
        keys.group("wire")
                .ifPresent(wire -> found.addAll(exactlyOne(wire, Places.key(place, "wire"), "awg", "diameter_mm")));
        return found;
    }

    private static List<Finding> board(Keys keys, String place) {
        List<Finding> found = new ArrayList<>(modelOr(keys, place, "power_W"));
        found.addAll(ordered(keys, place, "out_min_V", "out_max_V"));
        return found;
    }

    /** What is wrong with the joint of a link. */
    static List<Finding> joint(Keys link, String place) {
        List<Finding> found = new ArrayList<>(exactlyOne(link, place, "ideal", "contact_mohm", "jumper"));
        if (link.flag("ideal").equals(Optional.of(false))) {
            found.add(Finding.of(Places.key(place, "ideal"), Problem.NOT_A_CHOICE, "false", "true"));
        }
        link.group("jumper")
                .ifPresent(jumper -> found.addAll(
                        exactlyOne(jumper, Places.key(place, "jumper"), "awg", "diameter_mm", "area_mm2")));
        return found;
    }

    private static List<Finding> modelOr(Keys keys, String place, String... names) {
        if (keys.has("model")) {
            return List.of();
        }
        List<String> missing = Stream.of(names).filter(name -> !keys.has(name)).toList();
        return missing.isEmpty()
                ? List.of()
                : List.of(Finding.of(place, Problem.NEEDS_MODEL_OR, String.join(", ", missing)));
    }

    private static List<Finding> exactlyOne(Keys keys, String place, String... names) {
        List<String> there = Stream.of(names).filter(keys::has).toList();
        if (there.isEmpty()) {
            return List.of(Finding.of(place, Problem.NEEDS_ONE_OF, String.join(", ", names)));
        }
        return there.size() == 1 ? List.of() : List.of(Finding.of(place, Problem.CLASH, String.join(", ", there)));
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
