package org.sagwise.scenario;

/** What the thumb does to the button. */
public enum Press {
    HELD,
    RELEASED;

    /** The press of a button that is held, or is not. */
    public static Press of(boolean held) {
        return held ? HELD : RELEASED;
    }

    public boolean isHeld() {
        return this == HELD;
    }
}
