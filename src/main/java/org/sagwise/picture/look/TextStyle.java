package org.sagwise.picture.look;

import org.sagwise.picture.pen.Face;
import org.sagwise.picture.pen.Plain;
import org.sagwise.picture.pen.Typeface;

/** Sizes and weights of text in pictures. */
public enum TextStyle {
    TITLE(26, Typeface.Weight.BOLD),
    HEADLINE(20, Typeface.Weight.BOLD),
    FIGURE(17.5, Typeface.Weight.BOLD),
    NAME(15.5, Typeface.Weight.BOLD),
    PLAIN(14.5, Typeface.Weight.REGULAR),
    SMALL(13.5, Typeface.Weight.REGULAR),
    SMALL_BOLD(13.5, Typeface.Weight.BOLD);

    private final double size;
    private final Typeface.Weight weight;

    TextStyle(double size, Typeface.Weight weight) {
        this.size = size;
        this.weight = weight;
    }

    /** Height of the letters' body at the usual text size. */
    public double size() {
        return size;
    }

    /** The face of this style at a text scale. */
    public Face face(double textScale) {
        return new Face(weight, size * textScale);
    }

    /** How wide a text is in this style, at a text scale. */
    public double width(String text, double textScale) {
        return face(textScale).width(Plain.text(text));
    }

    /** Distance from one line to the next, at a text scale. */
    public double lineHeight(double textScale) {
        return 1.22 * size * textScale;
    }
}
