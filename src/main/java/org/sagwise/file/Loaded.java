package org.sagwise.file;

import java.util.List;
import java.util.Optional;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;

/** What came of opening a scenario. */
public sealed interface Loaded {

    /** The scenario, if it could be opened. */
    default Optional<Scenario> scenario() {
        return this instanceof Ok ok ? Optional.of(ok.opened()) : Optional.empty();
    }

    /** What is wrong, from the top of the file down; empty if it could be opened. */
    default List<Finding> findings() {
        return this instanceof Refused refused ? refused.problems() : List.of();
    }

    /**
     * It is a scenario, and nothing is wrong with it.
     *
     * @param opened the scenario
     */
    record Ok(Scenario opened) implements Loaded {}

    /**
     * It is none that this program could honour.
     *
     * @param problems everything that was found, from the top of the file down; never empty
     */
    record Refused(List<Finding> problems) implements Loaded {

        public Refused {
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("refused without a reason");
            }
            problems = problems.stream().sorted(Finding.READING_ORDER).toList();
        }
    }
}
