package org.sagwise.part.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The keys of one object of a scenario file in the order in which they were written: immutable.
 *
 * <p>Kept as written, and not only as typed values, so that opening and saving a file loses
 * nothing: neither the order of keys nor the difference between "not said" and "said, and equal to
 * the default". Values are {@link Double} (every number), {@link String}, {@link Boolean}, {@code
 * Keys} (a nested object) and, under {@code "x"} alone, whatever plain data another tool left there
 * (maps, lists, strings, numbers, booleans, {@code null}).
 *
 * @param values key to value in written order; never null
 */
public record Keys(Map<String, Object> values) {

    /** No keys at all. */
    public static final Keys NONE = new Keys(Map.of());

    /** The key under which any tool may keep data of its own. */
    public static final String FOREIGN = "x";

    public Keys {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /**
     * Keys from alternating names and values, for code and tests.
     *
     * @param namesAndValues name, value, name, value …; whole numbers are taken as doubles
     * @throws IllegalArgumentException if a name has no value or is no string
     */
    public static Keys of(Object... namesAndValues) {
        if (namesAndValues.length % 2 != 0) {
            throw new IllegalArgumentException("a name without a value");
        }
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            if (!(namesAndValues[i] instanceof String name)) {
                throw new IllegalArgumentException("not a name: " + namesAndValues[i]);
            }
            map.put(name, plain(namesAndValues[i + 1]));
        }
        return new Keys(map);
    }

    private static Object plain(Object value) {
        return value instanceof Number number && !(value instanceof Double)
                ? Double.valueOf(number.doubleValue())
                : value;
    }

    public Set<String> names() {
        return values.keySet();
    }

    public boolean has(String name) {
        return values.containsKey(name);
    }

    /** The number under this name, in the unit that the name's ending says; empty if absent. */
    public OptionalDouble number(String name) {
        return values.get(name) instanceof Double number ? OptionalDouble.of(number) : OptionalDouble.empty();
    }

    public double number(String name, double otherwise) {
        return number(name).orElse(otherwise);
    }

    public Optional<String> text(String name) {
        return values.get(name) instanceof String text ? Optional.of(text) : Optional.empty();
    }

    public Optional<Boolean> flag(String name) {
        return values.get(name) instanceof Boolean flag ? Optional.of(flag) : Optional.empty();
    }

    public Optional<Keys> group(String name) {
        return values.get(name) instanceof Keys keys ? Optional.of(keys) : Optional.empty();
    }

    /** What other tools left under {@code "x"}: plain data, kept and never read by us. */
    public Optional<Object> foreign() {
        return Optional.ofNullable(values.get(FOREIGN));
    }

    /** These keys with one set: in its old place if it was there, else at the end. */
    public Keys with(String name, Object value) {
        Map<String, Object> map = new LinkedHashMap<>(values);
        map.put(name, plain(value));
        return new Keys(map);
    }

    /** These keys without some. */
    public Keys without(String... names) {
        Map<String, Object> map = new LinkedHashMap<>(values);
        List.of(names).forEach(map::remove);
        return new Keys(map);
    }
}
