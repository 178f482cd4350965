package org.sagwise.report.handout;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.commonmark.renderer.text.TextContentRenderer;
import org.sagwise.picture.pen.Typeface.Weight;
import org.sagwise.report.figure.PdfSheets;
import org.sagwise.report.handout.Handout.Blank;
import org.sagwise.report.handout.Handout.Frame;
import org.sagwise.report.handout.Handout.Item;
import org.sagwise.report.handout.Handout.Option;

/** Sets handouts as PDF on A4, black on white. */
public final class HandoutPdf {

    private static final float SIZE = 10.5f;
    private static final float SMALL = 9;
    private static final float LEADING = 1.36f;
    private static final float INDENT = PdfSheets.LEFT + 22;
    private static final float FIGURE = 440;

    private final TextContentRenderer plain = TextContentRenderer.builder().build();
    private final PdfSheets sheets;

    private HandoutPdf(PdfSheets sheets) {
        this.sheets = sheets;
    }

    /**
     * Writes all these handouts, each beginning on a sheet of its own. The stream is not closed.
     *
     * @throws IOException if the stream cannot be written to
     */
    public static void write(List<Handout> handouts, OutputStream out) throws IOException {
        try (PdfSheets sheets = new PdfSheets(handouts.get(0).locale())) {
            HandoutPdf pdf = new HandoutPdf(sheets);
            for (Handout handout : handouts) {
                pdf.set(handout);
            }
            sheets.save(handouts.get(0).title(), out);
        }
    }

    private void set(Handout handout) throws IOException {
        sheets.begin(handout.notice());
        sheets.down(18);
        paragraph(handout.title(), PdfSheets.LEFT, Weight.BOLD, 18);
        sheets.down(2);
        paragraph(handout.line(), PdfSheets.LEFT, Weight.REGULAR, SMALL);
        sheets.down(10);
        for (int i = 0; i < handout.items().size(); i++) {
            Item item = handout.items().get(i);
            // A picture or a heading stays with what it leads to.
            boolean leads = item.picture().isPresent() || isHeading(item);
            float needed = height(item) + (leads ? height(handout.items().get(i + 1)) : 0);
            if (!sheets.hasRoom(needed) && !sheets.isFresh()) {
                sheets.begin(handout.notice());
                sheets.down(12);
            }
            item(item, handout);
        }
    }

    private static boolean isHeading(Item item) {
        return item.text().startsWith("**") && item.text().endsWith("**");
    }

    /** How high an item is: it is kept on one sheet. */
    private float height(Item item) throws IOException {
        float height = lines(item.text(), SIZE, INDENT) + 10;
        height += item.picture().isPresent() ? PdfSheets.height(FIGURE) + 8 : 0;
        for (Option option : item.options()) {
            height += lines(option.text(), SIZE, INDENT + 34) + 2;
            height += lines(option.remark(), SMALL, INDENT + 34);
        }
        for (Blank blank : item.blanks()) {
            height += Math.max(1, blank.lines()) * 20;
        }
        return height + lines(item.remark(), SMALL, INDENT) + (item.frame() == Frame.NONE ? 0 : 16);
    }

    private float lines(String markdown, float size, float left) throws IOException {
        return markdown.isEmpty()
                ? 0
                : sheets.lines(text(markdown), Weight.REGULAR, size, PdfSheets.RIGHT - left)
                                .size()
                        * size
                        * LEADING;
    }

    private void item(Item item, Handout handout) throws IOException {
        float top = sheets.y();
        boolean framed = item.frame() != Frame.NONE;
        sheets.down(framed ? 8 : 0);
        if (!item.number().isEmpty()) {
            sheets.text(item.number(), PdfSheets.LEFT, Weight.BOLD, SIZE);
        }
        paragraph(
                text(item.text()),
                item.number().isEmpty() && !framed ? PdfSheets.LEFT : INDENT,
                isHeading(item) ? Weight.BOLD : Weight.REGULAR,
                SIZE);
        if (item.picture().isPresent()) {
            sheets.figure(item.picture().get(), handout.locale(), FIGURE);
            sheets.down(18);
        }
        for (Option option : item.options()) {
            option(option);
        }
        for (Blank blank : item.blanks()) {
            blank(blank);
        }
        remark(item.remark(), INDENT);
        if (framed) {
            float bottom = sheets.y() + 6;
            sheets.box(
                    INDENT - 10,
                    bottom,
                    PdfSheets.RIGHT - INDENT + 20,
                    top + SIZE - bottom,
                    item.frame() == Frame.WARNING ? 2 : 0.8f);
            sheets.down(8);
        }
        sheets.down(8);
    }

    private void option(Option option) throws IOException {
        sheets.box(INDENT, sheets.y() - 1, 9, 9, 0.9f);
        if (option.ticked()) {
            sheets.tick(INDENT);
        }
        sheets.text(option.letter(), INDENT + 18, Weight.BOLD, SIZE);
        paragraph(text(option.text()), INDENT + 34, Weight.REGULAR, SIZE);
        remark(option.remark(), INDENT + 34);
        sheets.down(2);
    }

    private void blank(Blank blank) throws IOException {
        sheets.down(4);
        if (blank.lines() == 0) {
            sheets.box(INDENT, sheets.y() - 1, 9, 9, 0.9f);
            if (!blank.filled().isEmpty()) {
                sheets.tick(INDENT);
            }
            sheets.text(blank.label(), INDENT + 18, Weight.REGULAR, SIZE);
            sheets.down(16);
        }
        for (int i = 0; i < blank.lines(); i++) {
            float from = INDENT;
            if (i == 0 && !blank.label().isEmpty()) {
                sheets.text(blank.label(), INDENT, Weight.REGULAR, SIZE);
                from += sheets.width(blank.label(), Weight.REGULAR, SIZE) + 8;
                sheets.text(blank.filled(), from + 4, Weight.BOLD, SIZE);
            }
            sheets.down(3);
            sheets.line(from, blank.label().isEmpty() ? PdfSheets.RIGHT : from + 220);
            sheets.down(17);
        }
    }

    private void remark(String remark, float left) throws IOException {
        if (!remark.isEmpty()) {
            paragraph(text(remark), left, Weight.REGULAR, SMALL);
        }
    }

    private void paragraph(String text, float left, Weight weight, float size) throws IOException {
        for (String line : sheets.lines(text, weight, size, PdfSheets.RIGHT - left)) {
            sheets.text(line, left, weight, size);
            sheets.down(size * LEADING);
        }
    }

    private String text(String markdown) {
        return plain.render(InertMarkdown.parse(markdown)).strip();
    }
}
