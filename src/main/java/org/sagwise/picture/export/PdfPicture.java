package org.sagwise.picture.export;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Locale;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.sagwise.picture.look.Typeface;

/** Writes a page as PDF, its text as text in the embedded typeface. */
final class PdfPicture {

    /** CSS and PDF agree on 96 pixels and 72 points to the inch. */
    private static final float POINTS_PER_PIXEL = 0.75f;

    private PdfPicture() {}

    static void write(Sheet page, String title, Locale locale, PictureSize size, OutputStream out) throws IOException {
        float width = size.width() * POINTS_PER_PIXEL;
        float height = size.height() * POINTS_PER_PIXEL;
        try (PDDocument document = new PDDocument();
                PdfBoxGraphics2DFontTextDrawer fonts = new PdfBoxGraphics2DFontTextDrawer()) {
            PDDocumentInformation about = new PDDocumentInformation();
            about.setTitle(title);
            about.setCreator("Sagwise");
            document.setDocumentInformation(about);
            document.getDocumentCatalog().setLanguage(locale.toLanguageTag());
            PDPage sheet = new PDPage(new PDRectangle(width, height));
            document.addPage(sheet);
            for (Typeface.Weight weight : Typeface.Weight.values()) {
                register(fonts, document, weight);
            }
            PdfBoxGraphics2D surface = new PdfBoxGraphics2D(document, width, height);
            surface.setFontTextDrawer(fonts);
            surface.scale(POINTS_PER_PIXEL, POINTS_PER_PIXEL);
            page.paint(surface);
            surface.dispose();
            try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
                content.drawForm(surface.getXFormObject());
            }
            document.save(out);
        }
    }

    /** Without ligatures: what reads the text back would not know them for letters. */
    private static void register(PdfBoxGraphics2DFontTextDrawer fonts, PDDocument document, Typeface.Weight weight)
            throws IOException {
        try (InputStream file = Typeface.file(weight)) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            font.setEnableGsub(false);
            document.registerTrueTypeFontForClosing(font);
            fonts.registerFont(Typeface.of(weight, 1).getFontName(), PDType0Font.load(document, font, true));
        }
    }
}
