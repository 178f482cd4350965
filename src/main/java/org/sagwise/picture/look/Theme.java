package org.sagwise.picture.look;

import java.awt.Color;

/** How everything looks: which column of {@link Tone} is taken. */
public enum Theme {
    LIGHT,
    DARK,
    HIGH_CONTRAST;

    public Color colour(Tone tone) {
        return tone.in(this);
    }
}
