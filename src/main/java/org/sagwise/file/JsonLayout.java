package org.sagwise.file;

import java.util.AbstractMap.SimpleImmutableEntry;
import java.util.List;
import java.util.Map;
import org.sagwise.part.key.Keys;

/**
 * Lays JSON out for people: two spaces of indent, short objects and lists on one line.
 *
 * <p>Takes plain data: maps, {@link Keys}, lists, strings, numbers, booleans, {@code null}.
 */
final class JsonLayout {

    /** Objects and lists that fit into so many columns stay on one line. */
    private static final int SHORT = 100;

    /** Parts, links and notes stay on one line up to here: one a line is easy to compare. */
    private static final int LONG = 240;

    private static final String INDENT = "  ";

    /** Lists of the whole file whose entries each have a line. */
    private static final List<String> ONE_A_LINE = List.of("parts", "links");

    private JsonLayout() {}

    /** One line without any space. */
    static String compact(Object value) {
        StringBuilder out = new StringBuilder();
        flat(value, ",", ":", out);
        return out.toString();
    }

    /** A whole file: every key of the outermost object on a line of its own. */
    static String lines(Map<String, Object> file) {
        StringBuilder out = new StringBuilder("{\n");
        String separator = "";
        for (Map.Entry<String, Object> entry : file.entrySet()) {
            out.append(separator).append(INDENT);
            String name = JsonWords.text(entry.getKey()) + ": ";
            out.append(name);
            boolean broken =
                    ONE_A_LINE.contains(entry.getKey()) && entry.getValue() instanceof List<?> list && !list.isEmpty();
            if (broken) {
                broken(entry.getValue(), INDENT, LONG, out);
            } else {
                fitting(entry.getValue(), INDENT, name.length(), SHORT, out);
            }
            separator = ",\n";
        }
        return out.append("\n}").toString();
    }

    /** On one line if it fits, else broken. */
    private static void fitting(Object value, String indent, int before, int room, StringBuilder out) {
        boolean scalar = entries(value).isEmpty();
        int start = out.length();
        flat(value, ", ", ": ", out);
        if (!scalar && out.length() - start + before + indent.length() > room) {
            out.setLength(start);
            broken(value, indent, indent.equals(INDENT) ? LONG : room, out);
        }
    }

    private static void broken(Object value, String indent, int room, StringBuilder out) {
        boolean list = value instanceof List;
        String inner = indent + INDENT;
        out.append(list ? "[\n" : "{\n");
        String separator = "";
        for (Map.Entry<String, Object> entry : entries(value)) {
            String name = list ? "" : JsonWords.text(entry.getKey()) + ": ";
            out.append(separator).append(inner).append(name);
            fitting(entry.getValue(), inner, name.length(), room, out);
            separator = ",\n";
        }
        out.append("\n").append(indent).append(list ? "]" : "}");
    }

    private static void flat(Object value, String comma, String colon, StringBuilder out) {
        boolean list = value instanceof List;
        if (!list && !(value instanceof Map) && !(value instanceof Keys)) {
            out.append(JsonWords.scalar(value));
            return;
        }
        out.append(list ? '[' : '{');
        String separator = "";
        for (Map.Entry<String, Object> entry : entries(value)) {
            out.append(separator);
            if (!list) {
                out.append(JsonWords.text(entry.getKey())).append(colon);
            }
            flat(entry.getValue(), comma, colon, out);
            separator = comma;
        }
        out.append(list ? ']' : '}');
    }

    /** What lies inside, with its name in an object; nothing inside a single value. */
    private static List<Map.Entry<String, Object>> entries(Object value) {
        if (value instanceof List<?> list) {
            return list.stream().map(item -> entry("", item)).toList();
        } else if (value instanceof Keys keys) {
            return entries(keys.values());
        } else if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream()
                    .map(item -> entry((String) item.getKey(), item.getValue()))
                    .toList();
        }
        return List.of();
    }

    private static Map.Entry<String, Object> entry(String name, Object value) {
        return new SimpleImmutableEntry<>(name, value);
    }
}
