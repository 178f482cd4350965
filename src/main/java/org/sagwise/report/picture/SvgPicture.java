package org.sagwise.report.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.sagwise.picture.pen.Plain;
import org.sagwise.report.pen.Outlines;
import org.sagwise.report.pen.SvgPen;

/** Writes a page as SVG. */
final class SvgPicture {

    private static final int DECIMALS = 3;

    /** Outlines of letters are many numbers; two decimals of a pixel are more than anybody sees. */
    private static final int OUTLINE_DECIMALS = 2;

    private SvgPicture() {}

    /** A file of its own, without a document type, so that no reader goes and fetches one. */
    static void write(Sheet page, String title, Locale locale, PictureSize size, OutputStream out) throws IOException {
        String file = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + svg(page, title, locale, size, new SvgPen(OUTLINE_DECIMALS, new Outlines()));
        out.write(file.getBytes(StandardCharsets.UTF_8));
    }

    /** The element alone, to stand in a page of HTML. */
    static String svg(Sheet page, String title, Locale locale, PictureSize size) {
        return svg(page, title, locale, size, new SvgPen(DECIMALS));
    }

    private static String svg(Sheet page, String title, Locale locale, PictureSize size, SvgPen pen) {
        page.paint(pen);
        String attributes = " width=\"%d\" height=\"%d\" role=\"img\" xml:lang=\"%s\""
                .formatted(size.width(), size.height(), locale.toLanguageTag());
        return pen.svg(size.width(), size.height(), attributes, Plain.text(title));
    }
}
