package org.sagwise.text;

import java.util.function.BiConsumer;

/**
 * Reads what {@link java.util.Properties} reads, from text instead of bytes and at a stretch, since somebody waits for
 * it in a browser. Lines that go on in the next are refused: none of ours do.
 */
final class PropertyLines {

    private final String text;
    private final BiConsumer<String, String> heard;
    private int at;

    private PropertyLines(String text, BiConsumer<String, String> heard) {
        this.text = text;
        this.heard = heard;
    }

    /**
     * @param heard hears each key and what stands under it, in the order of the text
     * @throws IllegalArgumentException if an escape has not its four hexadecimal digits, or a line goes on in the next
     */
    static void of(String text, BiConsumer<String, String> heard) {
        PropertyLines lines = new PropertyLines(text, heard);
        while (lines.at < text.length()) {
            lines.line();
        }
    }

    private void line() {
        blanks();
        if (at >= text.length()) {
            return;
        }
        char first = text.charAt(at);
        if (first == '#' || first == '!') {
            at = lineEnd();
        } else if (isEnd(first)) {
            at++;
        } else {
            String key = word(true);
            blanks();
            if (at < text.length() && isSeparator(text.charAt(at))) {
                at++;
                blanks();
            }
            heard.accept(key, word(false));
        }
    }

    private int lineEnd() {
        int end = at;
        while (end < text.length() && !isEnd(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private void blanks() {
        while (at < text.length() && isBlank(text.charAt(at))) {
            at++;
        }
    }

    private static boolean isBlank(char sign) {
        return sign == ' ' || sign == '\t' || sign == '\f';
    }

    private static boolean isEnd(char sign) {
        return sign == '\n' || sign == '\r';
    }

    private static boolean isSeparator(char sign) {
        return sign == '=' || sign == ':';
    }

    /** A key, or what stands under it; mostly there is no escape in it, and it is cut out in one piece. */
    private String word(boolean isKey) {
        int start = at;
        StringBuilder out = null;
        while (at < text.length()) {
            char sign = text.charAt(at);
            if (isEnd(sign) || isKey && (isBlank(sign) || isSeparator(sign))) {
                break;
            } else if (sign == '\\') {
                out = out == null ? new StringBuilder() : out;
                out.append(text, start, at);
                at++;
                escaped(out);
                start = at;
            } else {
                at++;
            }
        }
        String rest = text.substring(start, at);
        return out == null ? rest : out.append(rest).toString();
    }

    /** What stands behind a backslash. */
    private void escaped(StringBuilder out) {
        if (at >= text.length()) {
            return;
        }
        char sign = text.charAt(at++);
        switch (sign) {
            case 'n' -> out.append('\n');
            case 't' -> out.append('\t');
            case 'r' -> out.append('\r');
            case 'f' -> out.append('\f');
            case 'u' -> {
                if (at + 4 > text.length()) {
                    throw new IllegalArgumentException("an escape is cut off");
                }
                out.append((char) Integer.parseInt(text.substring(at, at + 4), 16));
                at += 4;
            }
            case '\r', '\n' -> throw new IllegalArgumentException("no line of ours goes on in the next");
            default -> out.append(sign);
        }
    }
}
