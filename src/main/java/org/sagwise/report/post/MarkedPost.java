package org.sagwise.report.post;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.text.Signs;

/** Writes a post in some markup, block by block with an empty line between. */
final class MarkedPost {

    /** How one markup writes what a post is made of. Nothing that a file brought takes effect. */
    interface Markup {

        /** A text that means nothing but itself. */
        String inert(String plain);

        String title(String inert);

        String heading(String inert);

        String notice(String inert);

        String strong(String inert);

        List<String> bullets(List<String> inert);

        List<String> steps(List<String> inert);

        /** Lines that are shown as they are. */
        List<String> code(List<String> lines);
    }

    private final Markup markup;
    private final Lines lines;
    private final List<String> out = new ArrayList<>();

    private MarkedPost(Markup markup, Signs signs) {
        this.markup = markup;
        this.lines = new Lines(signs);
    }

    static String write(List<Block> post, Markup markup, Signs signs) {
        MarkedPost marked = new MarkedPost(markup, signs);
        post.forEach(marked::block);
        return String.join("\n", marked.out).strip() + "\n";
    }

    private void block(Block block) {
        if (block instanceof Block.Title title) {
            paragraph(markup.title(inert(title.text())));
        } else if (block instanceof Block.Heading heading) {
            paragraph(markup.heading(inert(heading.text())));
        } else if (block instanceof Block.Paragraph paragraph) {
            paragraph(inert(paragraph.text()));
        } else if (block instanceof Block.Notice notice) {
            paragraph(markup.notice(inert(notice.text())));
        } else if (block instanceof Block.Code code) {
            lines(markup.code(List.of(code.text())));
        } else if (block instanceof Block.Table table) {
            lines(markup.code(lines.columns(table)));
        } else if (block instanceof Block.Bullets bullets) {
            lines(markup.bullets(inert(bullets.items())));
        } else if (block instanceof Block.Steps steps) {
            lines(markup.steps(inert(steps.items())));
        } else if (block instanceof Block.Hazard hazard) {
            paragraph(markup.strong(inert(hazard.signal() + ": " + hazard.title())));
            hazard.paragraphs().forEach(text -> paragraph(inert(text)));
        }
    }

    private String inert(String text) {
        return markup.inert(Inert.links(lines.plain(text)));
    }

    private List<String> inert(List<String> texts) {
        return texts.stream().map(this::inert).toList();
    }

    private void paragraph(String text) {
        lines(List.of(text));
    }

    private void lines(List<String> text) {
        out.addAll(text);
        out.add("");
    }
}
