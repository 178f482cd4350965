package org.sagwise.text;

import java.util.Comparator;

/**
 * A place in a text, as editors count it.
 *
 * @param line from 1
 * @param column from 1, in characters (UTF-16 units)
 */
public record Position(int line, int column) implements Comparable<Position> {

    private static final Comparator<Position> READING_ORDER =
            Comparator.comparingInt(Position::line).thenComparingInt(Position::column);

    @Override
    public int compareTo(Position other) {
        return READING_ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return line + ":" + column;
    }
}
