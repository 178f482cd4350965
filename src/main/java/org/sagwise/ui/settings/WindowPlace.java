package org.sagwise.ui.settings;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a window is, in screen coordinates.
 *
 * @param state whether it fills the screen; the rest is its place when it does not
 */
public record WindowPlace(double x, double y, double width, double height, State state) {

    /** Whether a window fills the screen. */
    public enum State {
        NORMAL,
        MAXIMIZED
    }

    /** The same place with the window filling the screen. */
    public WindowPlace maximized() {
        return new WindowPlace(x, y, width, height, State.MAXIMIZED);
    }

    static Optional<WindowPlace> read(Object plain) {
        return plain instanceof Map<?, ?> map
                        && Stream.of("x", "y", "width", "height").allMatch(key -> map.get(key) instanceof Number)
                ? Optional.of(new WindowPlace(
                        number(map, "x"),
                        number(map, "y"),
                        number(map, "width"),
                        number(map, "height"),
                        Boolean.TRUE.equals(map.get("maximized")) ? State.MAXIMIZED : State.NORMAL))
                : Optional.empty();
    }

    Object written() {
        return Map.of(
                "x", x,
                "y", y,
                "width", width,
                "height", height,
                "maximized", state == State.MAXIMIZED);
    }

    private static double number(Map<?, ?> map, String key) {
        return ((Number) map.get(key)).doubleValue();
    }
}
