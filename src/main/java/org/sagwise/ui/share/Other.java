package org.sagwise.ui.share;

import java.util.Optional;
import org.sagwise.scenario.Scenario;

/** With what the bench is compared. */
sealed interface Other {

    /** With the same bench, as far as a cure is known for it. */
    record Corrected() implements Other {}

    /** With something that does not change. */
    record Chosen(Scenario scenario) implements Other {}

    /** What it is, if it is known without looking for a cure. */
    default Optional<Scenario> known() {
        return this instanceof Chosen chosen ? Optional.of(chosen.scenario()) : Optional.empty();
    }
}
