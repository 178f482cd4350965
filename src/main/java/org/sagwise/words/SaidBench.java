package org.sagwise.words;

import java.util.List;
import java.util.Optional;

/** What came of saying a bench in words. */
public sealed interface SaidBench {

    /** The line, if there is one. */
    default Optional<String> line() {
        return this instanceof Line said ? Optional.of(said.words()) : Optional.empty();
    }

    /** A line of which the same circuit can be made. */
    record Line(String words) implements SaidBench {}

    /**
     * It cannot be said in a line.
     *
     * @param reasons sentences for people; at least one
     */
    record Unsaid(List<String> reasons) implements SaidBench {
        public Unsaid {
            reasons = List.copyOf(reasons);
        }
    }
}
