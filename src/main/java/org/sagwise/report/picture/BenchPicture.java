package org.sagwise.report.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;
import org.sagwise.report.pen.Pixels;

/**
 * Writes a picture of all of a bench: title, bench with its figures, cautions in short, staircase
 * and the notice that this is a teaching model. Needs no display.
 */
public final class BenchPicture {

    private BenchPicture() {}

    /**
     * Writes a picture of the bench at the start. The stream is not closed.
     *
     * @throws IOException if the stream cannot be written to
     */
    public static void write(
            Assessment assessment, PictureFormat format, Locale locale, Theme theme, PictureSize size, OutputStream out)
            throws IOException {
        write(assessment, Drawing.BENCH, format, locale, theme, size, out);
    }

    /**
     * Writes a picture of the bench or of its schematic at the start. The stream is not closed.
     *
     * @throws IOException if the stream cannot be written to
     */
    public static void write(
            Assessment assessment,
            Drawing drawing,
            PictureFormat format,
            Locale locale,
            Theme theme,
            PictureSize size,
            OutputStream out)
            throws IOException {
        write(Moment.start(assessment), drawing, format, locale, theme, size, out);
    }

    /**
     * Writes a picture of the bench or of its schematic at some moment, which it names. The stream
     * is not closed.
     *
     * @throws IOException if the stream cannot be written to
     */
    public static void write(
            Moment moment,
            Drawing drawing,
            PictureFormat format,
            Locale locale,
            Theme theme,
            PictureSize size,
            OutputStream out)
            throws IOException {
        Page page = new Page(moment, drawing, locale, theme, size);
        write(page, moment.assessment().scenario().title(), format, locale, size, out);
    }

    /** The picture at some moment as an element of SVG, to stand in a page of HTML. */
    public static String svg(Moment moment, Drawing drawing, Locale locale, Theme theme, PictureSize size) {
        Page page = new Page(moment, drawing, locale, theme, size);
        return SvgPicture.svg(page, moment.assessment().scenario().title(), locale, size);
    }

    /** Writes any sheet; the one place that knows what each format takes. */
    static void write(Sheet page, String title, PictureFormat format, Locale locale, PictureSize size, OutputStream out)
            throws IOException {
        switch (format) {
            case PNG -> Pixels.writePng(size.width(), size.height(), true, page::paint, out);
            case SVG -> SvgPicture.write(page, title, locale, size, out);
            case PDF -> PdfPicture.write(page, title, locale, size, out);
        }
    }
}
