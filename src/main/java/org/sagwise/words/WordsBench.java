package org.sagwise.words;

import java.util.List;
import java.util.Optional;
import org.sagwise.scenario.Scenario;

/** What came of a line of words. */
public sealed interface WordsBench {

    /** The bench, if the line could be read. */
    default Optional<Scenario> scenario() {
        return this instanceof Built built ? Optional.of(built.bench()) : Optional.empty();
    }

    /**
     * It was read.
     *
     * @param bench the bench; its text tells the line and what was assumed
     * @param assumed what the line did not say
     */
    record Built(Scenario bench, List<Assumed> assumed) implements WordsBench {
        public Built {
            assumed = List.copyOf(assumed);
        }
    }

    /**
     * It could not be read.
     *
     * @param complaints everything that is wrong, from left to right; at least one
     */
    record Refused(List<Complaint> complaints) implements WordsBench {
        public Refused {
            complaints = List.copyOf(complaints);
        }
    }
}
