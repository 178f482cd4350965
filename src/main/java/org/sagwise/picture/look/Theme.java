package org.sagwise.picture.look;

import org.sagwise.picture.pen.Colour;

/** How everything looks: which column of {@link Tone} is taken. */
public enum Theme {
    LIGHT,
    DARK,
    HIGH_CONTRAST;

    public Colour colour(Tone tone) {
        return tone.in(this);
    }
}
