package org.sagwise.picture.pen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** Makes the files of widths that lie beside the bundled fonts; run it when a font changes. */
final class FontWidths {

    private FontWidths() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of("src/main/resources/org/sagwise/fonts");
        for (Typeface.Weight weight : Typeface.Weight.values()) {
            String name = weight == Typeface.Weight.BOLD ? "SourceSans3-Bold.widths" : "SourceSans3-Regular.widths";
            Files.writeString(folder.resolve(name), of(weight));
        }
    }

    /** What the file of a weight must say. */
    static String of(Typeface.Weight weight) throws IOException {
        try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(Typeface.file(weight)))) {
            CmapLookup glyphs = font.getUnicodeCmapLookup(false);
            StringBuilder text = new StringBuilder().append(font.getAdvanceWidth(0));
            int last = -1;
            for (int letter = 0; letter < Character.MIN_SUPPLEMENTARY_CODE_POINT; letter++) {
                int glyph = glyphs.getGlyphId(letter);
                if (glyph != 0) {
                    text.append(last == letter - 1 ? " " : "\n%04X ".formatted(letter));
                    text.append(font.getAdvanceWidth(glyph));
                    last = letter;
                }
            }
            return text.append('\n').toString();
        }
    }
}
