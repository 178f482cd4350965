package org.sagwise.picture.export;

import org.sagwise.picture.look.TextStyle;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines that fit a width. */
final class WordWrap {

    private WordWrap() {}

    static List<String> lines(String text, TextStyle style, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && style.width(longer, 1) > width) {
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
