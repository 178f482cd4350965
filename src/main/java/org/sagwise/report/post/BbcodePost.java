package org.sagwise.report.post;

import org.sagwise.quantity.QuantityFormat.Signs;

import java.util.ArrayList;
import java.util.List;

/**
 * Writes a post in the bracket tags that most forums know: bold, list and code, and no others. The
 * tags have no common way to escape a bracket, so brackets from a file become round.
 */
final class BbcodePost {

    private final Lines lines;
    private final List<String> out = new ArrayList<>();

    BbcodePost(Signs signs) {
        this.lines = new Lines(signs);
    }

    String write(List<Block> post) {
        post.forEach(this::block);
        return String.join("\n", out).strip() + "\n";
    }

    private void block(Block block) {
        if (block instanceof Block.Title title) {
            paragraph("[b]" + inert(title.text()) + "[/b]");
        } else if (block instanceof Block.Heading heading) {
            paragraph("[b]" + inert(heading.text()) + "[/b]");
        } else if (block instanceof Block.Paragraph paragraph) {
            paragraph(inert(paragraph.text()));
        } else if (block instanceof Block.Notice notice) {
            paragraph("[i]" + inert(notice.text()) + "[/i]");
        } else if (block instanceof Block.Code code) {
            code(List.of(code.text()));
        } else if (block instanceof Block.Table table) {
            code(lines.columns(table));
        } else if (block instanceof Block.Bullets bullets) {
            list("[list]", bullets.items());
        } else if (block instanceof Block.Steps steps) {
            list("[list=1]", steps.items());
        } else if (block instanceof Block.Hazard hazard) {
            paragraph("[b]" + inert(hazard.signal() + ": " + hazard.title()) + "[/b]");
            hazard.paragraphs().forEach(text -> paragraph(inert(text)));
        }
    }

    private void list(String tag, List<String> items) {
        out.add(tag);
        items.forEach(item -> out.add("[*]" + inert(item)));
        out.add("[/list]");
        out.add("");
    }

    private void paragraph(String text) {
        out.add(text);
        out.add("");
    }

    private void code(List<String> text) {
        out.add("[code]");
        text.forEach(line -> out.add(round(line)));
        out.add("[/code]");
        out.add("");
    }

    private String inert(String text) {
        return round(Inert.links(lines.plain(text)));
    }

    private static String round(String text) {
        return text.replace('[', '(').replace(']', ')');
    }
}
