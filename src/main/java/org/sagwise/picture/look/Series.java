package org.sagwise.picture.look;

import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Stroke;

/**
 * Lines of a chart, told apart by colour and by dashes. Colours: M. Okabe and K. Ito, "Colour
 * Universal Design: how to make figures and presentations that are friendly to colorblind people"
 * (2002, 2008); the yellow is left out, since on paper it is hardly seen.
 */
public enum Series {
    BLUE(0x0072B2),
    VERMILION(0xD55E00, 8, 4),
    BLUISH_GREEN(0x009E73, 2, 3),
    REDDISH_PURPLE(0xCC79A7, 10, 3, 2, 3),
    ORANGE(0xE69F00, 14, 5),
    SKY_BLUE(0x56B4E9, 5, 2),
    GREY(0x999999, 1, 2);

    private final Colour colour;
    private final double[] dashes;

    Series(int rgb, double... dashes) {
        this.colour = Colour.of(rgb);
        this.dashes = dashes;
    }

    public Colour colour() {
        return colour;
    }

    /** Dashes and gaps in turn, empty for a whole line. */
    public double[] dashes() {
        return dashes.clone();
    }

    public Stroke stroke(double width) {
        return dashes.length == 0 ? Stroke.round(width) : Stroke.dashed(width, dashes);
    }
}
