package org.sagwise.web.page;

import org.sagwise.web.lesson.RichText;

/** Texts of a lesson as elements. */
final class Rich {

    private Rich() {}

    /** Paragraphs, and items with their sign before them. */
    static Tag of(String className, String markdown) {
        Tag column = Dom.tag("div", className, "");
        fill(column, markdown);
        return column;
    }

    static void fill(Tag column, String markdown) {
        Dom.clear(column);
        for (RichText.Block block : RichText.of(markdown)) {
            Tag paragraph = Dom.tag("p", block.lead().isEmpty() ? "" : "item", "");
            if (!block.lead().isEmpty()) {
                paragraph.appendChild(Dom.tag("span", "", block.lead()));
            }
            runs(paragraph, block);
            column.appendChild(paragraph);
        }
    }

    /** Words inside something that is no column, such as a button. */
    static Tag inline(String className, String markdown) {
        Tag line = Dom.tag("span", className, "");
        RichText.of(markdown).forEach(block -> runs(line, block));
        return line;
    }

    private static void runs(Tag into, RichText.Block block) {
        for (RichText.Run run : block.runs()) {
            String name = switch (run.style()) {
                case PLAIN -> "span";
                case EMPHASIS -> "em";
                case STRONG -> "strong";
                case CODE -> "code";
            };
            into.appendChild(Dom.tag(name, "", run.text()));
        }
    }
}
