package org.sagwise.picture.pen;

/**
 * The bundled typeface in a size.
 *
 * @param size height of the letters' body
 */
public record Face(Typeface.Weight weight, double size) {

    /** How wide a line of text is. */
    public double width(String text) {
        return Typeface.width(text, weight, size);
    }

    /** Where a text begins whose left end, middle or right end stands at a place. */
    public double left(String text, double x, Align align) {
        return align == Align.LEFT ? x : x - align.share() * width(text);
    }
}
