package org.sagwise.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.sagwise.part.PartKind;

/**
 * One defect of the list {@code broken/defects.txt}, which says how it is written down.
 *
 * @param name what is wrong
 * @param edits lines of the sound bench that are replaced
 * @param found what must be found: place, line and column, code, details
 */
record Defect(String name, List<Edit> edits, List<String> found) {

    static final Path FOLDER = Path.of("src/test/resources/broken");

    /** The bench that all defects but whole files are made of. */
    static final Path BENCH = FOLDER.resolve("bench.sagwise.json");

    /**
     * Lines that others stand for.
     *
     * @param first number of the first line that goes, from 1
     * @param last number of the last one
     * @param lines what stands there instead
     */
    record Edit(int first, int last, List<String> lines) {

        private static Edit of(String lines) {
            String[] ends = lines.split("-");
            int first = Integer.parseInt(ends[0]);
            return new Edit(first, ends.length == 1 ? first : Integer.parseInt(ends[1]), new ArrayList<>());
        }
    }

    /** All of the list. */
    static List<Defect> all() throws IOException {
        List<Defect> defects = new ArrayList<>();
        for (String line : lines("defects.txt")) {
            String rest = line.length() > 2 ? line.substring(2) : "";
            Defect last = defects.isEmpty() ? null : defects.get(defects.size() - 1);
            switch (line.isEmpty() ? '#' : line.charAt(0)) {
                case '=' -> defects.add(new Defect(rest, new ArrayList<>(), new ArrayList<>()));
                case '@' -> last.edits.add(Edit.of(rest));
                case '+' -> last.edits.get(last.edits.size() - 1).lines.add(rest);
                case '>' -> last.found.add(rest);
                case '#' -> {}
                default -> throw new IllegalArgumentException("no line of the list of defects: " + line);
            }
        }
        return defects;
    }

    /** A list beside the bench, where {@code {kinds}} stands for the words of all kinds of part. */
    static List<String> lines(String file) throws IOException {
        String kinds = String.join(", ", PartKind.words());
        return Files.readString(FOLDER.resolve(file))
                .replace("{kinds}", kinds)
                .lines()
                .toList();
    }

    /** The file with this defect. */
    byte[] file() throws IOException {
        if (edits.isEmpty()) {
            return Files.readAllBytes(whole());
        }
        List<String> lines =
                new ArrayList<>(Arrays.asList(Files.readString(BENCH).split("\n", -1)));
        for (int i = edits.size() - 1; i >= 0; i--) {
            List<String> replaced = lines.subList(edits.get(i).first - 1, edits.get(i).last);
            replaced.clear();
            replaced.addAll(edits.get(i).lines);
        }
        return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    }

    /** Where the file lies that is no variant of the bench. */
    Path whole() {
        return FOLDER.resolve("whole").resolve(name + ".json");
    }

    @Override
    public String toString() {
        return name;
    }
}
