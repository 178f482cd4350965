package org.sagwise.assessment.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Signal;
import org.sagwise.scenario.Scenario;

/**
 * The way from a faulty bench to a better one: fix after fix in the order of {@link FixKind}, until nothing is left or
 * nobody knows a cure, and of these the fewest that reach as much.
 *
 * @param steps the fixes in order, one or more
 * @param after the bench with all of them made; notes about what was changed are gone
 */
public record Cure(List<Fix> steps, Assessment after) {

    private static final int MOST_STEPS = 8;

    /** By how many there are of the gravest, then of the next, and so on. */
    private static final Comparator<List<Caution>> LESS_GRAVE = Stream.of(Signal.values())
            .map(signal -> Comparator.<List<Caution>>comparingLong(cautions ->
                    cautions.stream().filter(it -> it.signal() == signal).count()))
            .reduce(Comparator::thenComparing)
            .orElseThrow();

    public Cure {
        steps = List.copyOf(steps);
    }

    /** The cure of a bench; empty if it needs none or none is known. */
    public static Optional<Cure> of(Assessment faulty) {
        List<Fix> steps = new ArrayList<>();
        List<Fix> best = List.of();
        Assessment reached = faulty;
        Set<Scenario> seen = new HashSet<>(Set.of(faulty.scenario()));
        Assessment now = faulty;
        for (int i = 0; i < MOST_STEPS && !now.cautions().isEmpty(); i++) {
            Optional<Offer> next = Fixes.steps(now).stream()
                    .filter(offer -> seen.add(offer.after().scenario()))
                    .findFirst();
            if (next.isEmpty()) {
                break;
            }
            steps.add(next.get().fix());
            now = next.get().after();
            if (LESS_GRAVE.compare(now.cautions(), reached.cautions()) < 0) {
                best = List.copyOf(steps);
                reached = now;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(fewest(faulty, best, reached));
    }

    /** Without the steps that others made needless: what is wrong with a cell may be all that is wrong. */
    private static Cure fewest(Assessment faulty, List<Fix> found, Assessment reached) {
        List<Fix> steps = new ArrayList<>(found);
        Assessment after = reached;
        for (int i = steps.size() - 1; i >= 0 && steps.size() > 1; i--) {
            List<Fix> fewer = new ArrayList<>(steps);
            fewer.remove(i);
            Assessment without = after(faulty, fewer);
            if (isAsGood(without, after)) {
                steps = fewer;
                after = without;
            }
        }
        Set<String> changed = new HashSet<>();
        steps.forEach(step -> changed.addAll(step.changed()));
        return new Cure(steps, withoutNotes(after, changed).lookingAhead());
    }

    private static Assessment after(Assessment faulty, List<Fix> steps) {
        Scenario scenario = faulty.scenario();
        for (Fix step : steps) {
            scenario = step.apply(scenario);
        }
        return Assessment.of(scenario, faulty.bench().catalogue());
    }

    private static boolean isAsGood(Assessment one, Assessment other) {
        return one.cautions().stream()
                .allMatch(left -> other.cautions().stream()
                        .anyMatch(known -> Fixes.isSame(known, left) && known.signal() == left.signal()));
    }

    /** What was noted about a mistake no longer holds. */
    private static Assessment withoutNotes(Assessment assessment, Set<String> changed) {
        Scenario scenario = StaleNotes.away(assessment.scenario(), changed);
        return scenario.equals(assessment.scenario())
                ? assessment
                : Assessment.of(scenario, assessment.bench().catalogue());
    }
}
