package org.sagwise.cli;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.text.Wrap;

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
        return Wrap.lines(text, indent, indent, WIDTH);
    }

    /** A short word, such as a time, and a text beside it. */
    record Hung(String front, String text) {}

    /**
     * Short words in front and texts beside them, whose lines stand under each other in one column.
     */
    static List<String> hanging(List<Hung> items) {
        int front = items.stream().mapToInt(item -> width(item.front())).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (Hung item : items) {
            List<String> beside = lines(item.text(), " ".repeat(front + 4));
            String padding = " ".repeat(front + 2 - width(item.front()));
            lines.add("  " + item.front() + padding + beside.get(0).stripLeading());
            lines.addAll(beside.subList(1, beside.size()));
        }
        return lines;
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
