package org.sagwise.report.pen;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.sagwise.picture.pen.Face;
import org.sagwise.picture.pen.Plain;
import org.sagwise.picture.pen.Typeface;
import org.sagwise.picture.pen.Typeface.Weight;

/** The bundled typeface as Java 2D knows it. */
public final class Fonts {

    private static final Font REGULAR = load(Weight.REGULAR);
    private static final Font BOLD = load(Weight.BOLD);

    /** What stands for a letter without a shape. */
    private static final int MISSING = REGULAR.canDisplay('\u25A1') ? '\u25A1' : '?';

    private Fonts() {}

    /**
     * The typeface in a size. The bold file is marked as bold, so that a surface that knows fonts
     * by name and weight only takes the right one.
     */
    public static Font of(Face face) {
        float size = (float) face.size();
        return face.weight() == Weight.BOLD ? BOLD.deriveFont(Font.BOLD, size) : REGULAR.deriveFont(size);
    }

    /**
     * The text with a mark for every letter that the typeface has no shape for: paper and PDF take no
     * letters from elsewhere.
     */
    public static String printable(String text) {
        String plain = Plain.text(text);
        if (REGULAR.canDisplayUpTo(plain) < 0) {
            return plain;
        }
        StringBuilder printable = new StringBuilder();
        plain.codePoints()
                .map(letter -> REGULAR.canDisplay(letter) ? letter : MISSING)
                .forEach(printable::appendCodePoint);
        return printable.toString();
    }

    private static Font load(Weight weight) {
        try (InputStream file = Typeface.file(weight)) {
            return Font.createFont(Font.TRUETYPE_FONT, file);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (FontFormatException broken) {
            throw new IllegalStateException("the bundled font is broken: " + weight, broken);
        }
    }
}
