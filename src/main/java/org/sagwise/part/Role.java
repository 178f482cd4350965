package org.sagwise.part;

/** What a kind of part is for in a circuit. */
public enum Role {
    /** Gives volts by itself. */
    SOURCE,
    /** What the current is for: turns power into heat at its end of the way. */
    LOAD,
    /** Lies in the way of the current, and should be noticed as little as possible. */
    IN_LINE,
    /** Tells what it measures, in the way of the current or beside it. */
    METER,
    /** Takes power at one pair of terminals and gives it at another. */
    CONVERTER
}
