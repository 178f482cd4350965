package org.sagwise.reading;

/** What the thumb does to the button. */
public enum Press {
    HELD,
    RELEASED
}
