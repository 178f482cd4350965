package org.sagwise.picture.look;

import java.awt.BasicStroke;
import java.awt.Color;

/**
 * Lines of a chart, told apart by colour and by dashes. Colours: M. Okabe and K. Ito, "Color
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

    private final Color colour;
    private final float[] dashes;

    Series(int rgb, float... dashes) {
        this.colour = new Color(rgb);
        this.dashes = dashes;
    }

    public Color colour() {
        return colour;
    }

    /** Dashes and gaps in turn, empty for a whole line. */
    public float[] dashes() {
        return dashes.clone();
    }

    public BasicStroke stroke(float width) {
        return dashes.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 4, dashes, 0);
    }
}
