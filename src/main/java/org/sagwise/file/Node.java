package org.sagwise.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.sagwise.part.key.Keys;
import org.sagwise.text.Position;

/** A piece of a document, be it JSON or YAML, that knows where it stands. */
sealed interface Node {

    /** Line where it begins, from 1. */
    int line();

    /** Column where it begins, from 1, in characters (UTF-16 units). */
    int column();

    default Position position() {
        return new Position(line(), column());
    }

    /** The same as plain data: maps in written order, lists, and single values as this makes them. */
    Object plain(UnaryOperator<Object> scalars);

    /** The same as plain data; numbers stay as they are written. */
    default Object plain() {
        return plain(value -> value);
    }

    /** A value of the same type, for what is said about types. */
    Object sample();

    /**
     * A single value.
     *
     * @param value a string, a {@link WrittenNumber}, a boolean or {@code null}; of YAML, in which an
     *     author need not mark what is a text, always a string; under {@code x} any plain data
     */
    record Scalar(int line, int column, Object value) implements Node {

        String text() {
            return String.valueOf(value);
        }

        @Override
        public Object plain(UnaryOperator<Object> scalars) {
            return scalars.apply(value);
        }

        @Override
        public Object sample() {
            return value;
        }
    }

    /** A list. */
    record Items(int line, int column, List<Node> items) implements Node {

        @Override
        public Object plain(UnaryOperator<Object> scalars) {
            List<Object> list = new ArrayList<>(items.size());
            items.forEach(item -> list.add(item.plain(scalars)));
            return list;
        }

        @Override
        public Object sample() {
            return List.of();
        }
    }

    /** Names with their values, in written order. */
    record Group(int line, int column, Map<String, Entry> entries) implements Node {

        boolean has(String key) {
            return entries.containsKey(key);
        }

        /** The value under a name; empty where there is none. */
        Optional<Node> get(String key) {
            return Optional.ofNullable(entries.get(key)).map(Entry::value);
        }

        @Override
        public Map<String, Object> plain(UnaryOperator<Object> scalars) {
            Map<String, Object> object = new LinkedHashMap<>();
            entries.forEach((name, entry) -> object.put(name, entry.value().plain(scalars)));
            return object;
        }

        /**
         * The same as keys of a scenario: numbers become doubles, inner objects keys. What other
         * tools left under {@code x} stays as it is.
         */
        Keys keys() {
            return keys(entries.keySet());
        }

        /** Some of its keys. */
        Keys keys(Iterable<String> names) {
            Map<String, Object> keys = new LinkedHashMap<>();
            names.forEach(name -> keys.put(name, key(name, entries.get(name).value())));
            return keys.isEmpty() ? Keys.NONE : new Keys(keys);
        }

        private static Object key(String name, Node value) {
            boolean number = value instanceof Scalar scalar && scalar.value() instanceof Number;
            if (name.equals(Keys.FOREIGN) && !number) {
                return value.plain();
            } else if (value instanceof Group inner) {
                return inner.keys();
            }
            return number ? (Object) ((Number) ((Scalar) value).value()).doubleValue() : value.plain();
        }

        @Override
        public Object sample() {
            return Map.of();
        }
    }

    /**
     * A value under a name.
     *
     * @param line line where the name begins, from 1
     * @param column column where the name begins, from 1
     */
    record Entry(int line, int column, Node value) {

        Position position() {
            return new Position(line, column);
        }
    }
}
