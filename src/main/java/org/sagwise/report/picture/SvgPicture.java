package org.sagwise.report.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.sagwise.picture.pen.Plain;
import org.sagwise.report.pen.SvgPen;

/** Writes a page as SVG. */
final class SvgPicture {

    private static final int DECIMALS = 3;

    private SvgPicture() {}

    /** A file of its own, without a document type, so that no reader goes and fetches one. */
    static void write(Sheet page, String title, Locale locale, PictureSize size, OutputStream out) throws IOException {
        String file = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg(page, title, locale, size);
        out.write(file.getBytes(StandardCharsets.UTF_8));
    }

    /** The element alone, to stand in a page of HTML. */
    static String svg(Sheet page, String title, Locale locale, PictureSize size) {
        SvgPen pen = new SvgPen(DECIMALS);
        page.paint(pen);
        String attributes = " width=\"%d\" height=\"%d\" role=\"img\" xml:lang=\"%s\""
                .formatted(size.width(), size.height(), locale.toLanguageTag());
        return pen.svg(size.width(), size.height(), attributes, Plain.text(title));
    }
}
