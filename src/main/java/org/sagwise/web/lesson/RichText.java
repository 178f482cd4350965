package org.sagwise.web.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The Markdown that lessons are written in, for a page: paragraphs, list items, emphasis and code. Anything else stands
 * as it is written; nothing becomes a link or markup.
 */
public final class RichText {

    private static final Pattern ITEM = Pattern.compile("\\s{0,3}(?:([-*+])|(\\d{1,9})[.)])\\s+(.*)");

    private RichText() {}

    /**
     * A paragraph or the item of a list.
     *
     * @param lead what stands before an item; empty for a paragraph
     */
    public record Block(String lead, List<Run> runs) {
        public Block {
            runs = List.copyOf(runs);
        }
    }

    /** How words stand out. */
    public enum Style {
        PLAIN,
        EMPHASIS,
        STRONG,
        CODE
    }

    /** Words in one style. */
    public record Run(String text, Style style) {}

    public static List<Block> of(String markdown) {
        List<Block> blocks = new ArrayList<>();
        StringBuilder words = new StringBuilder();
        String lead = "";
        for (String line : (markdown + "\n\n").split("\n", -1)) {
            Matcher item = ITEM.matcher(line);
            boolean begins = item.matches();
            if ((line.isBlank() || begins) && !words.isEmpty()) {
                blocks.add(new Block(lead, runs(words.toString())));
                words.setLength(0);
                lead = "";
            }
            if (begins) {
                lead = item.group(1) != null ? "• " : item.group(2) + ". ";
            }
            String more = (begins ? item.group(3) : line).strip();
            if (!more.isEmpty()) {
                words.append(words.isEmpty() ? "" : " ").append(more);
            }
        }
        return blocks;
    }

    private static List<Run> runs(String text) {
        List<Run> runs = new ArrayList<>();
        StringBuilder plain = new StringBuilder();
        int at = 0;
        while (at < text.length()) {
            String sign = sign(text, at);
            int end = sign.isEmpty() ? -1 : end(text, at, sign);
            if (end < 0) {
                plain.append(text.charAt(at++));
                continue;
            }
            if (!plain.isEmpty()) {
                runs.add(new Run(plain.toString(), Style.PLAIN));
                plain.setLength(0);
            }
            runs.add(new Run(text.substring(at + sign.length(), end), style(sign)));
            at = end + sign.length();
        }
        if (!plain.isEmpty()) {
            runs.add(new Run(plain.toString(), Style.PLAIN));
        }
        return runs;
    }

    private static String sign(String text, int at) {
        for (String sign : List.of("**", "*", "`")) {
            if (text.startsWith(sign, at)) {
                return sign;
            }
        }
        return "";
    }

    /** Where the words end that begin with a sign here; -1 where it stands for itself. */
    private static int end(String text, int at, String sign) {
        int first = at + sign.length();
        if (first >= text.length() || Character.isWhitespace(text.charAt(first))) {
            return -1;
        }
        int end = text.indexOf(sign, first + 1);
        // One star before two of them belongs to those.
        while (sign.equals("*") && end >= 0 && text.startsWith("**", end)) {
            end = text.indexOf(sign, end + 2);
        }
        return end > first && !Character.isWhitespace(text.charAt(end - 1)) ? end : -1;
    }

    private static Style style(String sign) {
        return switch (sign) {
            case "**" -> Style.STRONG;
            case "*" -> Style.EMPHASIS;
            default -> Style.CODE;
        };
    }
}
