package org.sagwise.picture;

import java.awt.Color;
import org.sagwise.picture.pen.Colour;

/** Our colours as pixels of an image have them. */
public final class Awt {

    private Awt() {}

    public static Color colour(Colour colour) {
        return new Color(colour.red(), colour.green(), colour.blue(), colour.alpha());
    }
}
