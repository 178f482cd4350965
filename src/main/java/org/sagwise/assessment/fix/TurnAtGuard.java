package org.sagwise.assessment.fix;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.FlipParts;

/**
 * Turns what stands the wrong way round at a reverse guard that blocks: a cell, or the guard. Which of them it is shows
 * when each is tried.
 */
final class TurnAtGuard implements FixRule {

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        Scenario scenario = assessment.scenario();
        List<Part> guards = caution.parts().stream()
                .flatMap(id -> scenario.part(id).stream())
                .filter(part -> part.kind() == PartKind.REVERSE_GUARD)
                .toList();
        if (guards.isEmpty()) {
            return List.of();
        }
        return Stream.concat(scenario.partsOf(PartKind.CELL).stream(), guards.stream())
                .map(part -> new Fix(
                        FixKind.TURN, List.of(List.of(part)), Set.of(part.id()), new FlipParts(Set.of(part.id()))))
                .toList();
    }
}
