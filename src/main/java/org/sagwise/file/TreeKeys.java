package org.sagwise.file;

import java.util.LinkedHashMap;
import java.util.Map;
import org.sagwise.part.key.Keys;

/**
 * Turns an object of a JSON tree into {@link Keys}: numbers become doubles, inner objects keys.
 * What other tools left under {@code x} stays as it is.
 */
final class TreeKeys {

    private TreeKeys() {}

    static Keys of(Map<?, ?> object) {
        if (object.isEmpty()) {
            return Keys.NONE;
        }
        Map<String, Object> keys = new LinkedHashMap<>();
        object.forEach((name, value) -> keys.put((String) name, value((String) name, value)));
        return new Keys(keys);
    }

    private static Object value(String name, Object value) {
        if (name.equals(Keys.FOREIGN) && !(value instanceof Number)) {
            return value;
        } else if (value instanceof Number number) {
            return number.doubleValue();
        }
        return value instanceof Map<?, ?> object ? of(object) : value;
    }
}
