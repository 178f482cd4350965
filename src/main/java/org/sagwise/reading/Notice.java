package org.sagwise.reading;

import java.util.List;

/**
 * Something in the circuit that has no answer in ideal parts, told instead of computed.
 *
 * @param kind what it is
 * @param parts ids of the parts concerned
 */
public record Notice(Kind kind, List<String> parts) {

    public Notice {
        parts = List.copyOf(parts);
    }

    /** What can stand in the way of an answer. */
    public enum Kind {
        /** Sources without internal resistance joined so that they ask for different voltages. */
        IDEAL_SOURCES_DISAGREE,
        /** A source without internal resistance whose ends are joined without resistance. */
        IDEAL_SOURCE_SHORTED,
        /** A board for which no steady state was found. */
        NO_STEADY_STATE
    }
}
