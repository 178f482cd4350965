package org.sagwise.words;

/** A word of a line, without the marks around it. */
record Word(String text, int start) {

    Span span() {
        return new Span(start, start + text.length());
    }
}
