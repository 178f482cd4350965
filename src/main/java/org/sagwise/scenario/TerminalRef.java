package org.sagwise.scenario;

import java.util.Optional;

/**
 * Names one terminal of one part, as in {@code A.+} or {@code coil.1}.
 *
 * @param part id of the part
 * @param terminal name of the terminal on that part
 */
public record TerminalRef(String part, String terminal) implements Comparable<TerminalRef> {

    private static final String CAN = "can";

    /** Reads {@code part.terminal}; empty if the text has not that shape. */
    public static Optional<TerminalRef> parse(String text) {
        int dot = text.indexOf('.');
        return dot < 1 || dot == text.length() - 1 || text.indexOf('.', dot + 1) >= 0
                ? Optional.empty()
                : Optional.of(new TerminalRef(text.substring(0, dot), text.substring(dot + 1)));
    }

    /** Whether it is the metal side of a cell, under its wrap. */
    public boolean isCan() {
        return terminal.equals(CAN);
    }

    @Override
    public int compareTo(TerminalRef other) {
        int byPart = part.compareTo(other.part);
        return byPart != 0 ? byPart : terminal.compareTo(other.terminal);
    }

    @Override
    public String toString() {
        return part + "." + terminal;
    }
}
