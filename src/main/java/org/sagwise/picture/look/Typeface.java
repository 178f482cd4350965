package org.sagwise.picture.look;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The bundled typeface, so that a picture comes out the same on a bare server as on a desktop. A
 * window that shows these pictures must load the same files, or it falls back to another family.
 */
public final class Typeface {

    /** Family of the bundled files. */
    public static final String FAMILY = "Source Sans 3";

    /** What a reader of a picture with text in it may take instead, in order. */
    public static final String FALLBACKS =
            "'Source Sans 3', 'Source Sans Pro', Arial, Helvetica, 'Liberation Sans', 'Noto Sans',"
                    + " 'DejaVu Sans', sans-serif";

    private static final float UNIT = 100;
    private static final int MEASURED = 0x2300;
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    private static final Font REGULAR = load("SourceSans3-Regular.ttf");
    private static final Font BOLD = load("SourceSans3-Bold.ttf");
    private static final float[] REGULAR_WIDTHS = widths(REGULAR);
    private static final float[] BOLD_WIDTHS = widths(BOLD);

    private Typeface() {}

    /** Weights of the typeface. */
    public enum Weight {
        REGULAR,
        BOLD
    }

    /**
     * The typeface in a size. The bold file is marked as bold, so that a surface that knows fonts
     * by name and weight only takes the right one.
     */
    public static Font of(Weight weight, double size) {
        return weight == Weight.BOLD ? BOLD.deriveFont(Font.BOLD, (float) size) : REGULAR.deriveFont((float) size);
    }

    /** How wide a text is: the sum of its letters' widths, which are measured once. */
    public static double width(String text, Weight weight, double size) {
        float[] widths = weight == Weight.BOLD ? BOLD_WIDTHS : REGULAR_WIDTHS;
        double width = 0;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter >= MEASURED) {
                return of(weight, size).getStringBounds(text, CONTEXT).getWidth();
            }
            width += widths[letter];
        }
        return width * size / UNIT;
    }

    private static float[] widths(Font font) {
        char[] letters = new char[MEASURED];
        for (char letter = 0; letter < MEASURED; letter++) {
            letters[letter] = letter;
        }
        GlyphVector glyphs = font.deriveFont(UNIT).createGlyphVector(CONTEXT, letters);
        float[] widths = new float[MEASURED];
        for (int i = 0; i < MEASURED; i++) {
            widths[i] = glyphs.getGlyphMetrics(i).getAdvanceX();
        }
        return widths;
    }

    /** The bundled file of a weight, for a window to load. */
    public static InputStream file(Weight weight) {
        String name = weight == Weight.BOLD ? "SourceSans3-Bold.ttf" : "SourceSans3-Regular.ttf";
        return Typeface.class.getResourceAsStream("/org/sagwise/fonts/" + name);
    }

    private static Font load(String name) {
        try (InputStream file = Typeface.class.getResourceAsStream("/org/sagwise/fonts/" + name)) {
            return Font.createFont(Font.TRUETYPE_FONT, file);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (FontFormatException broken) {
            throw new IllegalStateException("the bundled font is broken: " + name, broken);
        }
    }
}
