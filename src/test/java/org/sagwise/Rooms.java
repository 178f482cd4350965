package org.sagwise;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The rooms of the program (packages under {@code org.sagwise}) and what each may use. */
final class Rooms {

    static final String ROOT = "org.sagwise";

    /** The rooms that hold the model alone: no screen, no file, no clock, no chance. */
    static final List<String> PURE = List.of(
            "errand",
            "text",
            "quantity",
            "part",
            "scenario",
            "words",
            "network",
            "circuit",
            "reading",
            "run",
            "hazard",
            "assessment",
            "plan",
            "lesson");

    private static final Map<String, List<String>> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("text", List.of());
        MAY_USE.put("quantity", List.of("text"));
        MAY_USE.put("part", List.of("quantity"));
        MAY_USE.put("scenario", List.of("part"));
        MAY_USE.put("words", List.of("scenario"));
        MAY_USE.put("errand", List.of());
        MAY_USE.put("network", List.of("errand"));
        MAY_USE.put("circuit", List.of("scenario", "network"));
        MAY_USE.put("reading", List.of("circuit"));
        MAY_USE.put("run", List.of("reading"));
        MAY_USE.put("hazard", List.of("run"));
        MAY_USE.put("assessment", List.of("hazard"));
        MAY_USE.put("plan", List.of("assessment", "words"));
        MAY_USE.put("lesson", List.of("plan"));
        MAY_USE.put("file", List.of("scenario", "lesson"));
        MAY_USE.put("picture", List.of("assessment"));
        MAY_USE.put("interaction", List.of("picture"));
        MAY_USE.put("report", List.of("picture", "run", "lesson", "words"));
        MAY_USE.put("web", List.of("plan", "file", "lesson", "interaction", "report"));
        MAY_USE.put("ui", List.of("plan", "words", "file", "lesson", "interaction", "report"));
        MAY_USE.put("cli", List.of("plan", "words", "file", "lesson", "picture", "report", "web"));
        MAY_USE.put("app", List.of("cli", "ui"));
    }

    private Rooms() {}

    /** Every room's name, in the order in which data flows. */
    static Collection<String> all() {
        return MAY_USE.keySet();
    }

    /** What a room may use, with what those rooms may use in turn; never the room itself. */
    static Set<String> withinReachOf(String room) {
        Set<String> reached = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(MAY_USE.get(room));
        while (!open.isEmpty()) {
            String next = open.pop();
            if (reached.add(next)) {
                open.addAll(MAY_USE.get(next));
            }
        }
        return reached;
    }

    /** The room that a package lies in; a class in the root itself is in a room of no name. */
    static String roomOf(String packageName) {
        String[] names = packageName.substring(ROOT.length()).split("\\.");
        return names.length > 1 ? names[1] : "";
    }

    /** The ArchUnit pattern of a room with its sub-packages. */
    static String pattern(String room) {
        return ROOT + "." + room + "..";
    }

    /** The ArchUnit patterns of several rooms. */
    static String[] patterns(Collection<String> rooms) {
        return rooms.stream().map(Rooms::pattern).toArray(String[]::new);
    }
}
