package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Breaks text into lines. */
final class Lines {

    private Lines() {}

    /**
     * Lines of at most so many characters, broken between words and where the text breaks them;
     * longer words are cut.
     */
    static List<String> wrap(String text, int characters) {
        String bare = text.strip();
        return bare.isEmpty()
                ? List.of()
                : Arrays.stream(bare.split("\r\n|\r|\n"))
                        .flatMap(line -> wrapLine(line, characters).stream())
                        .toList();
    }

    private static List<String> wrapLine(String text, int characters) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            while (rest.length() > characters) {
                flush(line, lines);
                lines.add(rest.substring(0, characters));
                rest = rest.substring(characters);
            }
            if (line.length() + 1 + rest.length() > characters) {
                flush(line, lines);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        flush(line, lines);
        return lines.isEmpty() ? List.of("") : lines;
    }

    private static void flush(StringBuilder line, List<String> lines) {
        if (!line.isEmpty()) {
            lines.add(line.toString());
            line.setLength(0);
        }
    }
}
