package org.sagwise.scenario;

/**
 * A remark bound to a part or a link.
 *
 * @param on id of the part or link
 * @param text what it says
 * @param keys as written
 */
public record Note(String on, String text, Keys keys) {

    /** A note read from keys that hold both texts. */
    public static Note of(Keys keys) {
        return new Note(keys.text("on").orElseThrow(), keys.text("text").orElseThrow(), keys);
    }

    public static Note of(String on, String text) {
        return of(Keys.of("on", on, "text", text));
    }
}
