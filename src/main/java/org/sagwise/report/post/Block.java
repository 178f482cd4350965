package org.sagwise.report.post;

import java.util.List;

/** A piece of a post, in plain words: whoever writes it out escapes what its format asks for. */
public sealed interface Block {

    /** The title of the whole post. */
    record Title(String text) implements Block {}

    /** The heading of a section. */
    record Heading(String text) implements Block {}

    record Paragraph(String text) implements Block {}

    /** Items without an order. */
    record Bullets(List<String> items) implements Block {
        public Bullets {
            items = List.copyOf(items);
        }
    }

    /** Items one after the other. */
    record Steps(List<String> items) implements Block {
        public Steps {
            items = List.copyOf(items);
        }
    }

    /**
     * Something that is wrong.
     *
     * @param signal signal word
     * @param title what it is, in a few words
     * @param paragraphs when and how much, why, and what it leads to
     */
    record Hazard(String signal, String title, List<String> paragraphs) implements Block {
        public Hazard {
            paragraphs = List.copyOf(paragraphs);
        }
    }

    /**
     * Numbers in columns.
     *
     * @param heads what stands above the columns; the first column holds words
     * @param rows as many cells each as there are heads
     */
    record Table(List<String> heads, List<List<String>> rows) implements Block {
        public Table {
            heads = List.copyOf(heads);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** Text that a program reads: a share text. */
    record Code(String text) implements Block {}

    /** Who comes first, and that this is a teaching model. */
    record Notice(String text) implements Block {}

    /**
     * A picture, for formats that can hold one.
     *
     * @param description what it shows, for those who do not see it
     * @param svg the picture, an SVG element without XML declaration
     */
    record Picture(String description, String svg) implements Block {}
}
