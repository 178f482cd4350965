package org.sagwise.cli;

import java.util.Map;
import java.util.regex.Pattern;
import org.sagwise.hazard.Signal;

/** In which colours a terminal shows how grave something is; elsewhere in none. */
enum Ink {
    PLAIN,
    COLOURED;

    private static final String END = "\u001b[0m";

    private static final Map<Signal, String> BEGINNINGS = Map.of(
            Signal.DANGER, "\u001b[1;31m",
            Signal.WARNING, "\u001b[1;33m",
            Signal.CAUTION, "\u001b[33m",
            Signal.NOTICE, "\u001b[36m");

    /**
     * Colour for a terminal that a person looks at and that knows it, unless NO_COLOR is set (no-color.org).
     *
     * @param noColor what that variable of the environment holds; null if it is not set
     * @param term what TERM holds, or null
     * @param isTerminal whether the output is one
     */
    static Ink of(String noColor, String term, boolean isTerminal) {
        boolean wanted = noColor == null || noColor.isEmpty();
        return wanted && isTerminal && term != null && !term.equals("dumb") ? COLOURED : PLAIN;
    }

    /** A line whose signal word takes on its colour; of a line that is printable already. */
    String paint(Signal signal, String word, String line) {
        return this == PLAIN ? line : line.replaceFirst(Pattern.quote(word), BEGINNINGS.get(signal) + word + END);
    }
}
