package org.sagwise.report.post;

import org.sagwise.quantity.QuantityFormat.Signs;

import java.util.ArrayList;
import java.util.List;

/**
 * Writes a post as Markdown (CommonMark). Nothing that a file brought with it takes effect as
 * Markdown or HTML, and no link comes of it.
 */
final class MarkdownPost {

    private final Lines lines;
    private final List<String> out = new ArrayList<>();

    MarkdownPost(Signs signs) {
        this.lines = new Lines(signs);
    }

    String write(List<Block> post) {
        post.forEach(this::block);
        return String.join("\n", out).strip() + "\n";
    }

    private void block(Block block) {
        if (block instanceof Block.Title title) {
            paragraph("# " + escaped(title.text()));
        } else if (block instanceof Block.Heading heading) {
            paragraph("## " + escaped(heading.text()));
        } else if (block instanceof Block.Paragraph paragraph) {
            paragraph(escaped(paragraph.text()));
        } else if (block instanceof Block.Notice notice) {
            paragraph("*" + escaped(notice.text()) + "*");
        } else if (block instanceof Block.Code code) {
            fenced(List.of(code.text()));
        } else if (block instanceof Block.Table table) {
            fenced(lines.columns(table));
        } else if (block instanceof Block.Bullets bullets) {
            bullets.items().forEach(item -> out.add("- " + escaped(item)));
            out.add("");
        } else if (block instanceof Block.Steps steps) {
            for (int i = 0; i < steps.items().size(); i++) {
                out.add((i + 1) + ". " + escaped(steps.items().get(i)));
            }
            out.add("");
        } else if (block instanceof Block.Hazard hazard) {
            paragraph("**" + escaped(hazard.signal() + ": " + hazard.title()) + "**");
            hazard.paragraphs().forEach(text -> paragraph(escaped(text)));
        }
    }

    private void paragraph(String text) {
        out.add(text);
        out.add("");
    }

    private void fenced(List<String> text) {
        out.add("```text");
        text.forEach(line -> out.add(line.replace("```", "'''")));
        out.add("```");
        out.add("");
    }

    /** CommonMark 0.31, 6.1: a backslash before punctuation takes its meaning away. */
    private String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        String plain = Inert.links(lines.plain(text));
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
            case '\\', '`', '*', '[', ']', '<', '>', '|', '~', '&', '@', '^', '$', '{', '}' -> true;
            case '_' -> true;
            case '#', '+', '-', '=' -> first;
            case '!' -> at + 1 < text.length() && text.charAt(at + 1) == '[';
            case '.', ')' -> text.substring(0, at).matches("\\d{1,9}");
            default -> false;
        };
    }
}
