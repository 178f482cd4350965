package org.sagwise.hazard;

import java.util.List;

/**
 * What may put a hazard right. How each is done, and whether it holds, is tried on the bench.
 *
 * @param ways the most promising first
 */
public record Cures(List<Way> ways) implements Bearing {

    /** A way of putting something right. */
    public enum Way {
        TURN_CELLS,
        TURN_AT_GUARD,
        MORE_OHMS,
        FEWER_WATTS,
        JOINT_AWAY,
        THICKER_WIRE,
        SAME_CHARGE,
        FULL_CHARGE,
        LIKE_CELL,
        SOUND_CELL,
        SOUND_WRAP,
        WARM_UP,
        SOUND_JOINT,
        SMALLER_FUSE,
        CLOSED_CIRCUIT,
        NEW_SWITCH,
        METER_VOLTS,
        SLOWER_CHARGE,
        LOWER_CHARGE
    }

    public Cures {
        ways = List.copyOf(ways);
    }

    static Cures cures(Way... ways) {
        return new Cures(List.of(ways));
    }
}
