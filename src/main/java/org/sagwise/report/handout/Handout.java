package org.sagwise.report.handout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.assessment.Assessment;

/**
 * A lesson on paper. Texts are Markdown with their readings filled in.
 *
 * @param locale language and decimal mark
 * @param title title of the lesson
 * @param line what stands under the title
 * @param items what follows, from top to bottom
 * @param notice what a teaching model must say of itself
 */
public record Handout(Locale locale, String title, String line, List<Item> items, String notice) {

    public Handout {
        items = List.copyOf(items);
    }

    /** For whom it is printed. */
    public enum Kind {
        /** With gaps, for learners. */
        SHEET,
        /** With all that belongs into the gaps, for who teaches. */
        KEY
    }

    /** How an item is set apart. */
    public enum Frame {
        NONE,
        /** Something that can hurt somebody. */
        WARNING,
        /** Something to keep in mind. */
        BOX
    }

    /**
     * One thing to read, answer or do.
     *
     * @param number its number, empty if it has none
     * @param text what it says
     * @param options answers to choose from
     * @param blanks gaps to write into, by the words before them
     * @param remark what only the key says; empty on a sheet
     * @param frame how it is set apart
     * @param picture a bench to look at
     */
    public record Item(
            String number,
            String text,
            List<Option> options,
            List<Blank> blanks,
            String remark,
            Frame frame,
            Optional<Assessment> picture) {

        public Item {
            options = List.copyOf(options);
            blanks = List.copyOf(blanks);
        }

        static Item text(String text, Frame frame) {
            return new Item("", text, List.of(), List.of(), "", frame, Optional.empty());
        }

        Item numbered(String given) {
            return new Item(given, text, options, blanks, remark, frame, picture);
        }

        Item with(List<Option> given) {
            return new Item(number, text, given, blanks, remark, frame, picture);
        }

        Item with(Blank... given) {
            return new Item(number, text, options, List.of(given), remark, frame, picture);
        }

        Item withRemark(String given) {
            return new Item(number, text, options, blanks, given, frame, picture);
        }
    }

    /**
     * One answer to choose.
     *
     * @param letter its letter
     * @param text the answer
     * @param ticked whether the key ticks it
     * @param remark the idea behind it and what to say to it; empty on a sheet
     */
    public record Option(String letter, String text, boolean ticked, String remark) {}

    /**
     * A gap.
     *
     * @param label what stands before it
     * @param filled what the key writes into it; empty on a sheet
     * @param lines how many lines there are to write on
     */
    public record Blank(String label, String filled, int lines) {}
}
