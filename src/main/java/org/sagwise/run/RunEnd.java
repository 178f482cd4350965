package org.sagwise.run;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.sagwise.run.RunEvent.Kind;

/** What ended a run. */
public enum RunEnd {
    /** A cell fell to its cut-off under load. */
    CUTOFF,
    /** The time asked for is over. */
    TIME,
    /** A cell vented, or may have. */
    VENTED,
    /** A cell was charged to where its own current interrupter acts. */
    INTERRUPTED,
    /** An overcharged cell's own current interrupter opened for good. */
    CID,
    /** A cell's own PTC tripped. */
    CELL_PTC,
    /** A fuse melted. */
    FUSE,
    /** A resettable fuse tripped. */
    PTC,
    /** The guard of a protected cell opened. */
    PROTECTION,
    /** A coil melted. */
    COIL_MELTED,
    /** A jumper melted. */
    WIRE_MELTED,
    /** A regulated board stopped. */
    BOARD,
    /** Every charger has finished. */
    CHARGED,
    /** Every charger has finished, and a cell was overcharged meanwhile. */
    OVERCHARGED,
    /** No current flows anywhere. */
    NO_CURRENT,
    /** Current flows, but no cell's charge changes any more to speak of. */
    STEADY,
    /** No currents balance this bench. */
    UNSOLVABLE,
    /** Calculating on would take too long for a bench of this size. */
    TOO_LONG,
    /** Whoever asked for it has called it off. */
    CANCELLED;

    private static final Map<Kind, RunEnd> CAUSES = new EnumMap<>(Kind.class);

    static {
        CAUSES.put(Kind.UNSOLVABLE, UNSOLVABLE);
        CAUSES.put(Kind.VENTED, VENTED);
        CAUSES.put(Kind.INTERRUPTED, INTERRUPTED);
        CAUSES.put(Kind.CID_OPENED, CID);
        CAUSES.put(Kind.CELL_PTC_TRIPPED, CELL_PTC);
        CAUSES.put(Kind.CUTOFF, CUTOFF);
        CAUSES.put(Kind.FUSE_BLOWN, FUSE);
        CAUSES.put(Kind.PTC_TRIPPED, PTC);
        CAUSES.put(Kind.GUARD_CURRENT, PROTECTION);
        CAUSES.put(Kind.GUARD_LOW, PROTECTION);
        CAUSES.put(Kind.GUARD_HIGH, PROTECTION);
        CAUSES.put(Kind.COIL_MELTED, COIL_MELTED);
        CAUSES.put(Kind.WIRE_MELTED, WIRE_MELTED);
        CAUSES.put(Kind.BOARD_CUTOFF, BOARD);
        CAUSES.put(Kind.BOARD_INPUT_LIMIT, BOARD);
        CAUSES.put(Kind.BOARD_NO_POWER, BOARD);
        CAUSES.put(Kind.BOARD_SHORTED, BOARD);
    }

    /** The word for it in machine-readable output, such as {@code cutoff}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * What a run until cut-off stops at; a charger that has finished is looked at by the runner.
     */
    static Set<Kind> stopping() {
        Set<Kind> kinds = EnumSet.copyOf(CAUSES.keySet());
        kinds.add(Kind.CHARGER_DONE);
        return kinds;
    }

    /** What an event ends a run as, or null if it ends none by itself. */
    static RunEnd of(Kind kind) {
        return CAUSES.get(kind);
    }
}
