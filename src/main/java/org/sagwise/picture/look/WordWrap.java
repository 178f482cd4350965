package org.sagwise.picture.look;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Breaks text into lines that fit a width. */
public final class WordWrap {

    private WordWrap() {}

    /** Lines of a style at the usual size of text. */
    public static List<String> lines(String text, TextStyle style, double width) {
        return lines(text, line -> style.width(line, 1) <= width);
    }

    /**
     * Lines that fit, broken between words; a word that does not fit stands in a line of its own.
     *
     * @param fits whether there is room for a line
     */
    public static List<String> lines(String text, Predicate<String> fits) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && !fits.test(longer)) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }
}
