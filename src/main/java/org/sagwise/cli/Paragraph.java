package org.sagwise.cli;

import java.util.ArrayList;
import java.util.List;

/** Breaks a text into lines that a forum post and a small terminal can hold. */
final class Paragraph {

    private static final int WIDTH = 78;

    private Paragraph() {}

    /**
     * The text in lines of at most 78 characters, where its words allow that.
     *
     * @param indent stands before every line
     */
    static List<String> lines(String text, String indent) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(indent);
        for (String word : text.strip().split("\\s+")) {
            boolean first = line.length() == indent.length();
            if (!first && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                first = true;
            }
            line.append(first ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
