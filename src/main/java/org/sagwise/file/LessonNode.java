package org.sagwise.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A piece of a lesson file that knows where it stands. */
sealed interface LessonNode {

    /** Path to it, as in {@code steps[2].text}; empty for the whole file. */
    String place();

    Position position();

    /** A word, number or text. */
    record Scalar(String place, Position position, String text) implements LessonNode {}

    /** A list. */
    record Items(String place, Position position, List<LessonNode> items) implements LessonNode {}

    /**
     * Keys with their values.
     *
     * @param keys where each key stands
     */
    record Group(String place, Position position, Map<String, LessonNode> values, Map<String, Position> keys)
            implements LessonNode {

        static Group empty(String place, Position position) {
            return new Group(place, position, new LinkedHashMap<>(), new LinkedHashMap<>());
        }

        String placeOf(String key) {
            return place.isEmpty() ? key : place + "." + key;
        }
    }
}
