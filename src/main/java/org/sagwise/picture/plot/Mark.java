package org.sagwise.picture.plot;

import org.sagwise.picture.look.Series;

/**
 * A point of a chart that stands for something by itself.
 *
 * @param label what it is, for people; written beside it where there is room
 * @param series its colour
 * @param share how far the dot is filled from its foot, 0 to 1: for a share of something
 * @param isChosen whether it is ringed
 */
public record Mark(String label, Series series, double x, double y, double share, boolean isChosen) {

    /** A full dot. */
    public static Mark of(String label, Series series, double x, double y) {
        return new Mark(label, series, x, y, 1, false);
    }

    /** The same, ringed or not. */
    public Mark chosen(boolean chosen) {
        return new Mark(label, series, x, y, share, chosen);
    }
}
