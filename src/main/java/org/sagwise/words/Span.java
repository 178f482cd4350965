package org.sagwise.words;

/**
 * A stretch of a line.
 *
 * @param start where it begins, from 0
 * @param end behind its last character
 */
public record Span(int start, int end) {

    /** Where it begins, as editors count it: from 1. */
    public int column() {
        return start + 1;
    }

    Span to(Span last) {
        return new Span(start, Math.max(end, last.end));
    }
}
