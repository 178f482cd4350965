package org.sagwise.report.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.sagwise.report.pen.PdfPen;

/** Writes a page as PDF. */
final class PdfPicture {

    /** CSS and PDF agree on 96 pixels and 72 points to the inch. */
    private static final float POINTS_PER_PIXEL = 0.75f;

    private PdfPicture() {}

    static void write(Sheet page, String title, Locale locale, PictureSize size, OutputStream out) throws IOException {
        float width = size.width() * POINTS_PER_PIXEL;
        float height = size.height() * POINTS_PER_PIXEL;
        try (PDDocument document = new PDDocument();
                PdfPen pen = new PdfPen(document)) {
            PDDocumentInformation about = new PDDocumentInformation();
            about.setTitle(title);
            about.setCreator("Sagwise");
            document.setDocumentInformation(about);
            document.getDocumentCatalog().setLanguage(locale.toLanguageTag());
            PDPage sheet = new PDPage(new PDRectangle(width, height));
            document.addPage(sheet);
            try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
                content.drawForm(pen.picture(width, height, POINTS_PER_PIXEL, page::paint));
            }
            document.save(out);
        }
    }
}
