package org.sagwise.report.post;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sagwise.text.Signs;

/** Writes a post as plain text that stands alone: 72 columns, to be read in a code block. */
final class TextPost {

    private final Lines lines;
    private final List<String> out = new ArrayList<>();

    TextPost(Signs signs) {
        this.lines = new Lines(signs);
    }

    String write(List<Block> post) {
        post.forEach(this::block);
        return String.join("\n", out) + "\n";
    }

    private void block(Block block) {
        if (block instanceof Block.Title title) {
            List<String> text = lines.wrap(title.text(), "", "");
            out.addAll(text);
            out.add("=".repeat(text.stream().mapToInt(String::length).max().orElse(0)));
        } else if (block instanceof Block.Heading heading) {
            gap();
            out.add(lines.plain(heading.text().toUpperCase(Locale.ROOT)));
        } else if (block instanceof Block.Paragraph paragraph) {
            gap();
            out.addAll(lines.wrap(paragraph.text(), "", ""));
        } else if (block instanceof Block.Notice notice) {
            gap();
            out.addAll(lines.wrap(notice.text(), "", ""));
        } else if (block instanceof Block.Code code) {
            gap();
            out.addAll(Lines.chopped(code.text()));
        } else {
            list(block);
        }
    }

    private void list(Block block) {
        if (block instanceof Block.Bullets bullets) {
            bullets.items().forEach(item -> out.addAll(lines.wrap(item, "- ", "  ")));
        } else if (block instanceof Block.Steps steps) {
            for (int i = 0; i < steps.items().size(); i++) {
                out.addAll(lines.wrap(steps.items().get(i), (i + 1) + ". ", "   "));
            }
        } else if (block instanceof Block.Table table) {
            gap();
            out.addAll(lines.columns(table));
        } else if (block instanceof Block.Hazard hazard) {
            gap();
            out.addAll(lines.wrap(hazard.signal() + ": " + hazard.title(), "", "  "));
            hazard.paragraphs().forEach(text -> out.addAll(lines.wrap(text, "  ", "  ")));
        }
    }

    private void gap() {
        if (!out.isEmpty() && !out.get(out.size() - 1).isEmpty()) {
            out.add("");
        }
    }
}
