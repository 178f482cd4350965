package org.sagwise.picture.look;

import org.sagwise.picture.pen.Colour;

/**
 * How well two colours can be told apart, by the definitions of relative luminance and contrast
 * ratio in the Web Content Accessibility Guidelines 2.1 (W3C Recommendation, 5 June 2018).
 */
public final class Contrast {

    /** Least contrast for text (success criterion 1.4.3). */
    public static final double TEXT = 4.5;

    /** Least contrast for what must be seen but not read (success criterion 1.4.11). */
    public static final double GRAPHICS = 3;

    private Contrast() {}

    /** Contrast ratio, 1 for equal colours to 21 for black and white. */
    public static double between(Colour one, Colour other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    /** Relative luminance, 0 for black to 1 for white. */
    public static double luminance(Colour colour) {
        return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) + 0.0722 * linear(colour.blue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
