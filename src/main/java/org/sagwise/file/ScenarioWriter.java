package org.sagwise.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/**
 * Writes scenarios, format 1, for people to read and for version control to compare: a part or a
 * link a line, keys in the order in which they were written, and nothing said that was not said.
 */
public final class ScenarioWriter {

    private ScenarioWriter() {}

    /** The text of a scenario file, with a line break at its end. */
    public static String write(Scenario scenario) {
        return JsonLayout.lines(top(scenario)) + "\n";
    }

    /** The same without any space, for where room is short. */
    public static String writeCompact(Scenario scenario) {
        return JsonLayout.compact(top(scenario));
    }

    private static Map<String, Object> top(Scenario scenario) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (String key : order(scenario)) {
            values.put(key, value(scenario, key));
        }
        return values;
    }

    /** The keys that the file had, and those that it needs by now, each at its usual place. */
    private static List<String> order(Scenario scenario) {
        List<String> order = new ArrayList<>(scenario.keyOrder());
        order.removeIf(key -> !ScenarioKeys.TOP_ORDER.contains(key) || hasGone(scenario, key));
        for (String key : ScenarioKeys.TOP_ORDER) {
            if (!order.contains(key) && isNeeded(scenario, key)) {
                order.add(placeFor(key, order), key);
            }
        }
        return order;
    }

    /** Behind the nearest key that usually stands before it. */
    private static int placeFor(String key, List<String> order) {
        for (int i = ScenarioKeys.TOP_ORDER.indexOf(key) - 1; i >= 0; i--) {
            int before = order.indexOf(ScenarioKeys.TOP_ORDER.get(i));
            if (before >= 0) {
                return before + 1;
            }
        }
        return 0;
    }

    /** Whether a key that the file had has nothing to say any more. */
    private static boolean hasGone(Scenario scenario, String key) {
        return switch (key) {
            case "probes" -> scenario.probes().isEmpty();
            case "x" -> scenario.foreign().isEmpty();
            default -> false;
        };
    }

    private static boolean isNeeded(Scenario scenario, String key) {
        return switch (key) {
            case "sagwise" -> true;
            case "title" -> !scenario.title().isEmpty();
            case "about" -> !scenario.about().isEmpty();
            case "ambient_C" -> scenario.ambientC() != ScenarioKeys.AMBIENT_C;
            case "parts" -> !scenario.parts().isEmpty();
            case "links" -> !scenario.links().isEmpty();
            case "fired" -> scenario.fired();
            case "probes" -> scenario.probes().isPresent();
            case "notes" -> !scenario.notes().isEmpty();
            case "placement" -> !scenario.placement().isEmpty();
            case "x" -> scenario.foreign().isPresent();
            default -> throw new IllegalArgumentException(key);
        };
    }

    private static Object value(Scenario scenario, String key) {
        return switch (key) {
            case "sagwise" -> (double) ScenarioKeys.FORMAT;
            case "title" -> scenario.title();
            case "about" -> scenario.about();
            case "ambient_C" -> scenario.ambientC();
            case "parts" -> scenario.parts().stream().map(Part::keys).toList();
            case "links" -> scenario.links().stream().map(Link::keys).toList();
            case "fired" -> scenario.fired();
            case "probes" -> scenario.probes().orElseThrow().keys();
            case "notes" -> scenario.notes().stream().map(Note::keys).toList();
            case "placement" -> placement(scenario);
            case "x" -> scenario.foreign().orElseThrow();
            default -> throw new IllegalArgumentException(key);
        };
    }

    private static Map<String, Keys> placement(Scenario scenario) {
        Map<String, Keys> places = new LinkedHashMap<>();
        scenario.placement().forEach((id, place) -> places.put(id, place.keys()));
        return places;
    }
}
