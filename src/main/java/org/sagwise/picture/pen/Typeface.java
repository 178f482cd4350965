package org.sagwise.picture.pen;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;

/**
 * The bundled typeface, so that a picture comes out the same on a bare server as on a desktop. A
 * window that shows these pictures must load the same files, or it falls back to another family.
 *
 * <p>How wide its letters are stands in a small file of its own beside each font: a browser or a
 * phone that paints our pictures has no reader of fonts.
 */
public final class Typeface {

    /** Family of the bundled files. */
    public static final String FAMILY = "Source Sans 3";

    /** Units of the widths in the files: so many are as long as the letters' body is high. */
    private static final double UNITS = 1000;

    private static final int LETTERS = 0x10000;
    private static final short[] REGULAR = widths(Weight.REGULAR);
    private static final short[] BOLD = widths(Weight.BOLD);

    private Typeface() {}

    /** Weights of the typeface. */
    public enum Weight {
        REGULAR("Regular"),
        BOLD("Bold");

        private final String fileName;

        Weight(String fileName) {
            this.fileName = fileName;
        }
    }

    /** How wide a text is: the sum of its letters' widths, without kerning and ligatures. */
    public static double width(String text, Weight weight, double size) {
        short[] widths = weight == Weight.BOLD ? BOLD : REGULAR;
        int width = 0;
        for (int i = 0; i < text.length(); i++) {
            width += widths[text.charAt(i)];
        }
        return width * size / UNITS;
    }

    /** The bundled file of a weight. */
    public static InputStream file(Weight weight) {
        return resource(weight, ".ttf");
    }

    private static InputStream resource(Weight weight, String ending) {
        return Typeface.class.getResourceAsStream("/org/sagwise/fonts/SourceSans3-" + weight.fileName + ending);
    }

    /**
     * Widths by letter. The first line of the file has that of the sign for a missing letter, each
     * other one the number of a letter, then its width and those of the letters that follow it.
     * Of a letter that takes two {@code char}s only the first counts.
     */
    private static short[] widths(Weight weight) {
        short[] widths = new short[LETTERS];
        try (InputStream file = resource(weight, ".widths")) {
            fill(widths, file.readAllBytes());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return widths;
    }

    /** By hand, since somebody waits for it in a browser, where readers of lines and splitting are slow. */
    private static void fill(short[] widths, byte[] file) {
        boolean isFirstLine = true;
        boolean isFirstWord = true;
        int letter = 0;
        int number = 0;
        for (byte sign : file) {
            if (sign == ' ' || sign == '\n') {
                if (isFirstLine) {
                    Arrays.fill(widths, (short) number);
                    Arrays.fill(widths, Character.MIN_LOW_SURROGATE, Character.MAX_LOW_SURROGATE + 1, (short) 0);
                } else if (isFirstWord) {
                    letter = number;
                } else {
                    widths[letter] = (short) number;
                    letter++;
                }
                isFirstLine &= sign != '\n';
                isFirstWord = sign == '\n';
                number = 0;
            } else {
                number = number * (isFirstWord && !isFirstLine ? 16 : 10) + digit(sign);
            }
        }
    }

    private static int digit(byte sign) {
        return sign <= '9' ? sign - '0' : sign - 'A' + 10;
    }
}
