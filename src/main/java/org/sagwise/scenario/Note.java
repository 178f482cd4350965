package org.sagwise.scenario;

import org.sagwise.part.key.Keys;

/**
 * A remark bound to a part or a link.
 *
 * @param on id of the part or link
 * @param text what it says; may have several lines
 * @param keys as written
 */
public record Note(String on, String text, Keys keys) {

    private static final String RIGHT = "dx";
    private static final String DOWN = "dy";

    /** A note read from keys that hold both texts. */
    public static Note of(Keys keys) {
        return new Note(keys.text("on").orElseThrow(), keys.text("text").orElseThrow(), keys);
    }

    public static Note of(String on, String text) {
        return of(Keys.of("on", on, "text", text));
    }

    /** The same note saying something else. */
    public Note saying(String other) {
        return of(keys.with("text", other));
    }

    /**
     * The same note lying elsewhere.
     *
     * @param dx grid units to the right of the middle of what it speaks of
     * @param dy grid units below it
     */
    public Note lying(double dx, double dy) {
        return of(keys.with(RIGHT, dx).with(DOWN, dy));
    }

    /** Whether somebody laid it somewhere; else the program finds a place. */
    public boolean isLaid() {
        return keys.has(RIGHT) || keys.has(DOWN);
    }

    /** How far it lies to the right of the middle of what it speaks of, grid units. */
    public double dx() {
        return keys.number(RIGHT, 0);
    }

    /** How far it lies below the middle of what it speaks of, grid units. */
    public double dy() {
        return keys.number(DOWN, 0);
    }
}
