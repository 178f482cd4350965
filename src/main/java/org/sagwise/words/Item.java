package org.sagwise.words;

import java.util.Set;
import org.sagwise.quantity.Unit;

/** One thing that a line says: an amount, a phrase, a name of the catalogue. */
sealed interface Item {

    Span span();

    /**
     * An amount with its unit.
     *
     * @param value in the unit
     */
    record Amount(Span span, Unit unit, double value) implements Item {}

    /** A number without a unit. */
    record Bare(Span span, String text, double value) implements Item {}

    /** A wire gauge. */
    record Gauge(Span span, int awg) implements Item {}

    /** So many of what follows: the {@code 2×} of {@code 2×26awg}. */
    record Times(Span span, int count) implements Item {}

    /**
     * How cells are arranged.
     *
     * @param rows cells, or plates of cells, in a row
     * @param side cells side by side in each
     */
    record Arranged(Span span, int rows, int side) implements Item {}

    /**
     * A phrase of the vocabulary.
     *
     * @param ids everything that it may mean
     */
    record Phrase(Span span, String text, Set<String> ids) implements Item {
        boolean means(String id) {
            return ids.contains(id);
        }
    }

    /** The id of an entry of the catalogue. */
    record Entry(Span span, String id) implements Item {}

    /** A chemistry or a format of cells. */
    record Make(Span span, String key, String word) implements Item {}

    /** The letter of a cell; {@code A} is 0. */
    record Letter(Span span, int cell) implements Item {}

    /** A number that can be read in two ways, or none. */
    record Odd(Span span, Complaint complaint) implements Item {}

    /** Anything else. */
    record Strange(Span span, String text) implements Item {}
}
