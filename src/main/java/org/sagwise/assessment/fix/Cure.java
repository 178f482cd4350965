package org.sagwise.assessment.fix;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.scenario.Scenario;

/**
 * The way from a faulty bench to a better one: fix after fix, each for the gravest caution that has
 * one, until nothing is left or nobody knows a cure.
 *
 * @param steps the fixes in order, one or more
 * @param after the bench with all of them made; notes about what was changed are gone
 */
public record Cure(List<Fix> steps, Assessment after) {

    private static final int MOST_STEPS = 8;

    public Cure {
        steps = List.copyOf(steps);
    }

    /** The cure of a bench; empty if it needs none or none is known. */
    public static Optional<Cure> of(Assessment faulty) {
        List<Fix> steps = new ArrayList<>();
        Set<String> changed = new HashSet<>();
        Assessment now = faulty;
        for (int i = 0; i < MOST_STEPS; i++) {
            Optional<Offer> next = Fixes.of(now).stream().findFirst();
            if (next.isEmpty()) {
                break;
            }
            steps.add(next.get().fix());
            changed.addAll(next.get().fix().changed());
            now = next.get().after();
        }
        return steps.isEmpty() ? Optional.empty() : Optional.of(new Cure(steps, withoutNotes(now, changed)));
    }

    /** What was noted about a mistake no longer holds. */
    private static Assessment withoutNotes(Assessment assessment, Set<String> changed) {
        Scenario scenario = StaleNotes.away(assessment.scenario(), changed);
        return scenario.equals(assessment.scenario())
                ? assessment
                : Assessment.of(scenario, assessment.bench().catalogue());
    }
}
