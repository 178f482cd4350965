package org.sagwise.report.figure;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.look.WordWrap;
import org.sagwise.picture.pen.Plain;
import org.sagwise.picture.pen.Typeface.Weight;
import org.sagwise.report.pen.Fonts;
import org.sagwise.report.pen.PdfPen;

/** Sheets of A4 paper with a pen that moves down them; lengths in points, 72 to the inch. */
public final class PdfSheets implements AutoCloseable {

    /** Left edge of the text. */
    public static final float LEFT = 56;

    /** Right edge of the text. */
    public static final float RIGHT = PDRectangle.A4.getWidth() - 50;

    private static final float TOP = PDRectangle.A4.getHeight() - 50;
    private static final float BOTTOM = 70;

    private final PDDocument document = new PDDocument();
    private final PdfPen drawer;
    private PDPageContentStream pen;
    private float y;

    /**
     * @param locale language of the text, which readers aloud ask for
     * @throws IOException if the bundled typeface cannot be read
     */
    public PdfSheets(Locale locale) throws IOException {
        document.getDocumentCatalog().setLanguage(locale.toLanguageTag());
        drawer = new PdfPen(document);
    }

    /** Begins a sheet and writes a line along its lower edge. */
    public void begin(String footer) throws IOException {
        finish();
        PDPage page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        pen = new PDPageContentStream(document, page);
        y = 54;
        for (String line : lines(footer, Weight.REGULAR, 8, RIGHT - LEFT - 30)) {
            text(line, LEFT, Weight.REGULAR, 8);
            y -= 10;
        }
        y = 54;
        text(String.valueOf(document.getNumberOfPages()), RIGHT - 12, Weight.REGULAR, 8);
        y = TOP;
    }

    /** Whether so much more fits above the lower edge. */
    public boolean hasRoom(float height) {
        return y - height >= BOTTOM;
    }

    /** Whether nothing has been set on this sheet yet. */
    public boolean isFresh() {
        return y == TOP;
    }

    /** Height of the pen above the lower edge of the paper. */
    public float y() {
        return y;
    }

    /** Moves the pen down. */
    public void down(float height) {
        y -= height;
    }

    /**
     * Writes one line at the pen's height.
     *
     * @param x from the left edge of the paper
     */
    public void text(String text, float x, Weight weight, float size) throws IOException {
        pen.beginText();
        pen.setFont(drawer.font(weight), size);
        pen.newLineAtOffset(x, y);
        pen.showText(Fonts.printable(text));
        pen.endText();
    }

    /** Draws a line to write on at the pen's height. */
    public void line(float fromX, float toX) throws IOException {
        pen.setLineWidth(0.6f);
        pen.moveTo(fromX, y);
        pen.lineTo(toX, y);
        pen.stroke();
    }

    /** Draws a frame, from its lower left corner. */
    public void box(float x, float bottom, float width, float height, float stroke) throws IOException {
        pen.setLineWidth(stroke);
        pen.addRect(x, bottom, width, height);
        pen.stroke();
    }

    /** A tick in the box of an answer. */
    public void tick(float x) throws IOException {
        pen.setLineWidth(1.4f);
        pen.moveTo(x + 1.5f, y + 4);
        pen.lineTo(x + 3.5f, y + 1.5f);
        pen.lineTo(x + 8, y + 8);
        pen.stroke();
    }

    /** Paints a bench under the pen; how high it is. */
    public void figure(Assessment bench, Locale locale, float width) throws IOException {
        PDFormXObject figure = drawer.picture(
                BenchFigure.WIDTH, BenchFigure.HEIGHT, 1, surface -> BenchFigure.paint(surface, bench, locale));
        float scale = width / BenchFigure.WIDTH;
        pen.saveGraphicsState();
        pen.transform(Matrix.getTranslateInstance(LEFT, y - height(width)));
        pen.transform(Matrix.getScaleInstance(scale, scale));
        pen.drawForm(figure);
        pen.restoreGraphicsState();
        y -= height(width);
    }

    /** How high a figure of this width is. */
    public static float height(float width) {
        return width * BenchFigure.HEIGHT / BenchFigure.WIDTH;
    }

    /** A text broken into lines that fit a width. */
    public List<String> lines(String text, Weight weight, float size, float width) throws IOException {
        try {
            return text.lines()
                    .flatMap(paragraph -> WordWrap.lines(paragraph, line -> fits(line, weight, size, width)).stream())
                    .toList();
        } catch (UncheckedIOException noGlyphs) {
            throw noGlyphs.getCause();
        }
    }

    private boolean fits(String line, Weight weight, float size, float width) {
        try {
            return width(line, weight, size) <= width;
        } catch (IOException noGlyphs) {
            throw new UncheckedIOException(noGlyphs);
        }
    }

    /** How wide a line of text is. */
    public float width(String text, Weight weight, float size) throws IOException {
        return drawer.font(weight).getStringWidth(Fonts.printable(text)) / 1000 * size;
    }

    /** Writes all sheets; nothing can be added after that. The stream is not closed. */
    public void save(String title, OutputStream out) throws IOException {
        finish();
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(Plain.text(title));
        about.setCreator("Sagwise");
        document.setDocumentInformation(about);
        document.save(out);
    }

    private void finish() throws IOException {
        if (pen != null) {
            pen.close();
        }
    }

    @Override
    public void close() throws IOException {
        drawer.close();
        document.close();
    }
}
