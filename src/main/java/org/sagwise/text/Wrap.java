package org.sagwise.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Breaks text into lines between words; a word that does not fit stands in a line of its own. */
public final class Wrap {

    private Wrap() {}

    /**
     * Lines without any indent.
     *
     * @param fits whether there is room for a line
     */
    public static List<String> lines(String text, Predicate<String> fits) {
        return lines(text, "", "", fits);
    }

    /** Lines of at most so many characters, each behind an indent, which counts. */
    public static List<String> lines(String text, String first, String others, int width) {
        return lines(text, first, others, line -> line.codePointCount(0, line.length()) <= width);
    }

    private static List<String> lines(String text, String first, String others, Predicate<String> fits) {
        List<String> lines = new ArrayList<>();
        String line = first;
        boolean begun = false;
        for (String word : text.strip().split("\\s+")) {
            String longer = begun ? line + " " + word : line + word;
            if (begun && !fits.test(longer)) {
                lines.add(line);
                line = others + word;
            } else {
                line = longer;
            }
            begun = true;
        }
        lines.add(line);
        return lines;
    }
}
