package org.sagwise.scenario;

import org.sagwise.part.key.Keys;

/**
 * Where a part lies on the bench.
 *
 * @param x grid units from the left, to the middle of the part
 * @param y grid units from the top, to the middle of the part
 * @param turnDegrees how far it is turned, clockwise
 * @param keys as written
 */
public record Placement(double x, double y, double turnDegrees, Keys keys) {

    public Placement(double x, double y, double turnDegrees) {
        this(x, y, turnDegrees, Keys.of("x", x, "y", y, "turn", turnDegrees));
    }

    /** A place read from keys that hold both coordinates. */
    public static Placement of(Keys keys) {
        return new Placement(keys.number("x", 0), keys.number("y", 0), keys.number("turn", 0), keys);
    }
}
