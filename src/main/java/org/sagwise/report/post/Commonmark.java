package org.sagwise.report.post;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Markdown (CommonMark). */
final class Commonmark implements MarkedPost.Markup {

    @Override
    public String title(String inert) {
        return "# " + inert;
    }

    @Override
    public String heading(String inert) {
        return "## " + inert;
    }

    @Override
    public String notice(String inert) {
        return "*" + inert + "*";
    }

    @Override
    public String strong(String inert) {
        return "**" + inert + "**";
    }

    @Override
    public List<String> bullets(List<String> inert) {
        return inert.stream().map(item -> "- " + item).toList();
    }

    @Override
    public List<String> steps(List<String> inert) {
        return IntStream.range(0, inert.size())
                .mapToObj(at -> (at + 1) + ". " + inert.get(at))
                .toList();
    }

    @Override
    public List<String> code(List<String> lines) {
        List<String> fenced = new ArrayList<>();
        fenced.add("```text");
        lines.forEach(line -> fenced.add(line.replace("```", "'''")));
        fenced.add("```");
        return fenced;
    }

    /** CommonMark 0.31, 6.1: a backslash before punctuation takes its meaning away. */
    @Override
    public String inert(String plain) {
        StringBuilder escaped = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            char sign = plain.charAt(i);
            if (isSpecial(plain, i)) {
                escaped.append('\\');
            }
            escaped.append(sign);
        }
        return escaped.toString();
    }

    /** Signs between letters and digits mean nothing, and a post is easier to edit without. */
    private static boolean isSpecial(String text, int at) {
        char sign = text.charAt(at);
        boolean first = at == 0;
        return switch (sign) {
            case '\\', '`', '*', '[', ']', '<', '>', '|', '~', '&', '^', '$', '{', '}' -> true;
            case '_' -> true;
            case '#', '+', '-', '=' -> first;
            case '!' -> at + 1 < text.length() && text.charAt(at + 1) == '[';
            case '.', ')' -> text.substring(0, at).matches("\\d{1,9}");
            default -> false;
        };
    }
}
