package org.sagwise.ui.settings;

/** Whether things on the bench move. */
public enum Motion {
    /** As the system has it, where it tells. */
    SYSTEM,
    FULL,
    REDUCED;

    /** What follows from it. */
    public Motion on(Motion system) {
        return this == SYSTEM ? system : this;
    }
}
