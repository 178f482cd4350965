package org.sagwise.picture.export;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;

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

    /** Writes any sheet; the one place that knows what each format takes. */
    static void write(Sheet page, String title, PictureFormat format, Locale locale, PictureSize size, OutputStream out)
            throws IOException {
        switch (format) {
            case PNG -> writePng(page, size, out);
            case SVG -> SvgPicture.write(page, title, locale, size, out);
            case PDF -> PdfPicture.write(page, title, locale, size, out);
        }
    }

    private static void writePng(Sheet page, PictureSize size, OutputStream out) throws IOException {
        BufferedImage image = new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        page.paint(surface);
        surface.dispose();
        if (!ImageIO.write(image, "png", out)) {
            throw new IllegalStateException("this Java has no writer for PNG");
        }
    }
}
