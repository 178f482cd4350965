package org.sagwise.report.pen;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.sagwise.picture.pen.Face;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.pen.Typeface;
import org.sagwise.picture.pen.Typeface.Weight;

/** Draws pictures for one document of PDF, their text as text in the embedded typeface. */
public final class PdfPen implements AutoCloseable {

    private final PDDocument document;
    private final PdfBoxGraphics2DFontTextDrawer drawer = new PdfBoxGraphics2DFontTextDrawer();
    private final Map<Weight, PDFont> fonts = new EnumMap<>(Weight.class);

    /**
     * Embeds the typeface, without ligatures: what reads the text back would not know them for
     * letters.
     *
     * @throws IOException if the bundled typeface cannot be read
     */
    public PdfPen(PDDocument document) throws IOException {
        this.document = document;
        for (Weight weight : Weight.values()) {
            try (InputStream file = Typeface.file(weight)) {
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
                font.setEnableGsub(false);
                document.registerTrueTypeFontForClosing(font);
                PDFont loaded = PDType0Font.load(document, font, true);
                fonts.put(weight, loaded);
                drawer.registerFont(Fonts.of(new Face(weight, 1)).getFontName(), loaded);
            }
        }
    }

    /** The embedded typeface, for text outside of pictures. */
    public PDFont font(Weight weight) {
        return fonts.get(weight);
    }

    /**
     * A picture to put on a page.
     *
     * @param width of the picture, points
     * @param height of the picture, points
     * @param scale points for each unit of what draws
     */
    public PDFormXObject picture(float width, float height, float scale, Consumer<Pen> drawing) throws IOException {
        PdfBoxGraphics2D surface = new PdfBoxGraphics2D(document, width, height);
        surface.setFontTextDrawer(drawer);
        surface.scale(scale, scale);
        drawing.accept(new Java2dPen(surface));
        surface.dispose();
        return surface.getXFormObject();
    }

    @Override
    public void close() {
        drawer.close();
    }
}
