package org.sagwise.file;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;

/**
 * The words of the demos in one language, put over those of the one file that each demo is: so a
 * translated demo is the same bench by construction.
 */
final class DemoTexts {

    private static final Control NO_FALLBACK = Control.getNoFallbackControl(Control.FORMAT_PROPERTIES);

    private final ResourceBundle bundle;
    private final String demo;

    private DemoTexts(ResourceBundle bundle, String demo) {
        this.bundle = bundle;
        this.demo = demo;
    }

    /**
     * A demo in other words.
     *
     * @param written the file of the demo
     * @param locale whose language the words shall be in; what is not translated stays English
     */
    static byte[] translated(String demo, byte[] written, Locale locale) {
        ResourceBundle bundle = ResourceBundle.getBundle("org.sagwise.demo.texts", locale, NO_FALLBACK);
        Map<String, Object> file = SettingsFile.read(written).orElseThrow();
        return (JsonLayout.lines(new DemoTexts(bundle, demo).over(file)) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private Map<String, Object> over(Map<String, Object> file) {
        Map<String, Object> other = new LinkedHashMap<>(file);
        put(other, "title", "title");
        put(other, "about", "about");
        other.computeIfPresent(
                "parts", (key, parts) -> objects(parts).stream().map(this::part).toList());
        other.computeIfPresent(
                "notes", (key, notes) -> objects(notes).stream().map(this::note).toList());
        return other;
    }

    /** A label stands behind the kind, where people look for it. */
    private Map<String, Object> part(Map<String, Object> part) {
        Map<String, Object> other = new LinkedHashMap<>();
        part.forEach((key, value) -> {
            other.put(key, value);
            if (key.equals("kind")) {
                put(other, "label", "label." + part.get("id"));
            }
        });
        put(other, "label", "label." + part.get("id"));
        return other;
    }

    private Map<String, Object> note(Map<String, Object> note) {
        Map<String, Object> other = new LinkedHashMap<>(note);
        put(other, "text", "note." + note.get("on"));
        return other;
    }

    private void put(Map<String, Object> object, String key, String text) {
        String name = demo + "." + text;
        if (bundle.containsKey(name)) {
            object.put(key, bundle.getString(name));
        }
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> objects(Object list) {
        return (List<Map<String, Object>>) list;
    }
}
