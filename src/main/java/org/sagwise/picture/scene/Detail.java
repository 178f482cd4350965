package org.sagwise.picture.scene;

import java.util.EnumSet;
import java.util.Set;

/** What a bench picture may show besides parts and conductors. */
public enum Detail {
    /** Names and figures beside parts. */
    FIGURES,
    /** Amps and drop on every conductor. */
    LINK_FIGURES,
    /** Flags on parts that a caution speaks of. */
    FLAGS,
    NOTES,
    PROBES,
    /** The colour scale of potential. */
    LEGEND,
    /** The grid, while something is moved. */
    GRID,
    /** The red probe of the meter is held, and rests nowhere. */
    RED_IN_HAND,
    /** The black probe is held. */
    BLACK_IN_HAND;

    /** What is shown unless something else is asked for. */
    public static Set<Detail> usual() {
        return EnumSet.of(FIGURES, FLAGS, NOTES, PROBES, LEGEND);
    }
}
