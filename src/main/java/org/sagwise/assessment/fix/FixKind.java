package org.sagwise.assessment.fix;

import java.util.Locale;

/**
 * The kinds of cures. They stand in the order in which a bench is put right: what is wrong with the cells, then with
 * joints, then with what switches, guards and charges, then what the coil asks for, and wires last, since what they
 * must bear follows from all else.
 */
public enum FixKind {
    TURN,
    NEW_CELL,
    SOUND_WRAP,
    LIKE_CELL,
    CHARGE,
    CHARGE_FULL,
    WARM_UP,
    JOINT_AWAY,
    SOUND_JOINT,
    JOIN,
    NEW_SWITCH,
    METER_VOLTS,
    NEW_FUSE,
    SMALLER_FUSE,
    SMALLER_PTC,
    SLOW_CHARGE,
    LOWER_CHARGE,
    FEWER_WATTS,
    MORE_OHMS,
    MORE_OHMS_EACH,
    MORE_OHMS_SINGLY,
    THICKER_GAUGE,
    THICKER_AREA;

    /** As in {@code turn}: the key of its name in the bundle {@code fixes}, and for programs. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
