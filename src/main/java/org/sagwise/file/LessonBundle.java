package org.sagwise.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A whole lesson in one line of JSON, as a live page holds it: steps and benches, each as it stands in the lesson's
 * folder, without what only the instructor reads. It is read by the same reader as the folder.
 */
public final class LessonBundle {

    private static final String ID = "id";
    private static final String FILES = "files";
    private static final String NOTE = "note";

    private LessonBundle() {}

    /**
     * Packs a lesson.
     *
     * @param source a lesson that {@link LessonReader} finds nothing wrong with
     * @throws IOException if one of its files cannot be read
     * @throws IllegalArgumentException if it is no lesson
     */
    public static String write(LessonSource source) throws IOException {
        Map<String, Object> lesson = Optional.of(YamlDocument.read(text(source, LessonReader.FILE)))
                .flatMap(Document::group)
                .map(group -> group.plain(UnaryOperator.identity()))
                .orElseThrow(() -> new IllegalArgumentException("no lesson in " + source.id()));
        lesson.computeIfPresent(NOTE, (key, note) -> blanked(note));
        if (lesson.get("steps") instanceof List<?> steps) {
            steps.forEach(step -> ((Map<?, ?>) step).remove(NOTE));
        }
        Map<String, Object> files = new LinkedHashMap<>();
        files.put(LessonReader.FILE, JsonLayout.compact(lesson));
        for (String name : benches(lesson)) {
            files.put(name, compact(text(source, name)));
        }
        Map<String, Object> whole = new LinkedHashMap<>();
        whole.put(ID, source.id());
        whole.put(FILES, files);
        return JsonLayout.compact(whole);
    }

    /** A note says nothing, in each of its languages: a lesson has to have one. */
    private static Object blanked(Object note) {
        Map<String, Object> blank = new LinkedHashMap<>();
        ((Map<?, ?>) note).keySet().forEach(code -> blank.put(String.valueOf(code), "–"));
        return blank;
    }

    private static List<String> benches(Map<String, Object> lesson) {
        List<String> names = new ArrayList<>();
        for (Object bench : ((Map<?, ?>) lesson.get("benches")).values()) {
            Object file = ((Map<?, ?>) bench).get("file");
            if (file != null && !names.contains(file.toString())) {
                names.add(file.toString());
            }
        }
        return names;
    }

    private static String text(LessonSource source, String name) throws IOException {
        return new String(source.file(name).orElse(new byte[0]), StandardCharsets.UTF_8);
    }

    private static String compact(String json) {
        return PlainJson.read(json)
                .root()
                .map(root -> JsonLayout.compact(root.plain()))
                .orElse(json);
    }

    /** The files of a lesson that was packed; empty if the text is something else. */
    public static Optional<LessonSource> read(String text) {
        Map<String, Object> whole = PlainJson.read(text)
                .group()
                .map(group -> group.plain(UnaryOperator.identity()))
                .orElse(Map.of());
        return whole.get(ID) instanceof String id && whole.get(FILES) instanceof Map<?, ?> files
                ? Optional.of(new Unpacked(id, files))
                : Optional.empty();
    }

    private record Unpacked(String id, Map<?, ?> files) implements LessonSource {

        @Override
        public Optional<byte[]> file(String name) {
            return files.get(name) instanceof String text
                    ? Optional.of(text.getBytes(StandardCharsets.UTF_8))
                    : Optional.empty();
        }
    }
}
