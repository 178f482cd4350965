package org.sagwise.assessment.fix;

import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.scenario.Scenario;

/**
 * A cure that was tried and holds.
 *
 * @param caution what it cures
 * @param fix the edit
 * @param after what there is to say about the bench once it is made
 */
public record Offer(Caution caution, Fix fix, Assessment after) {

    /** The scenario with the fix made; notes about what it changes are gone. */
    public Scenario result() {
        return StaleNotes.away(after.scenario(), fix.changed());
    }

    /** Whether notes go with what they spoke of. */
    public boolean takesNotesAway() {
        return !result().equals(after.scenario());
    }
}
