package org.sagwise.cli;

/** Writes text in the macros of man(7), so that nothing in it is taken for a macro. */
final class Roff {

    private final StringBuilder text = new StringBuilder();

    /** Whether a heading stands right above, after which a paragraph begins by itself. */
    private boolean fresh;

    /** The title line, before anything else. */
    void head(String name, String section, String source, String manual) {
        text.append("'\\\" -*- coding: UTF-8 -*-\n");
        macro("TH", name, section, "", source, manual);
    }

    void section(String title) {
        macro("SH", title);
    }

    void heading(String title) {
        macro("SS", title);
    }

    /** Running text. */
    void line(String words) {
        String plain = words.strip();
        if (!plain.isEmpty()) {
            text.append(escaped(plain)).append('\n');
            fresh = false;
        }
    }

    void paragraph(String words) {
        if (!words.isBlank()) {
            if (!fresh) {
                text.append(".PP\n");
            }
            line(words);
        }
    }

    /** A term and what it means. */
    void entry(String term, String meaning) {
        text.append(".TP\n.B ").append(escaped(term)).append('\n');
        line(meaning);
    }

    /** A line to be typed. */
    void code(String line) {
        text.append(".IP\n.EX\n").append(escaped(line)).append("\n.EE\n");
    }

    String text() {
        return text.toString();
    }

    private void macro(String name, String... words) {
        text.append('.').append(name);
        for (String word : words) {
            text.append(" \"").append(escaped(word).replace("\"", "\\(dq")).append('"');
        }
        text.append('\n');
        fresh = true;
    }

    /** Backslashes and hyphens as themselves, and no line that begins like a request. */
    private static String escaped(String words) {
        String plain = words.replace("\\", "\\e").replace("-", "\\-").replace("\n", " ");
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }
}
