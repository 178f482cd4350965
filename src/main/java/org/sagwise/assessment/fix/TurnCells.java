package org.sagwise.assessment.fix;

import java.util.List;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.edit.FlipParts;

/** Turns cells that stand the wrong way round: what was joined to plus is joined to minus. */
final class TurnCells implements FixRule {

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {

        List<Part> parts = caution.parts().stream()
                .limit(caution.turned())
                .map(id -> assessment.scenario().part(id).orElseThrow())
                .filter(part -> part.kind() == PartKind.CELL || part.kind() == PartKind.CHARGER)
                .toList();
        if (parts.isEmpty()) {
            return List.of();
        }
        Set<String> ids = Set.copyOf(parts.stream().map(Part::id).toList());
        return List.of(new Fix(FixKind.TURN, List.of(parts), ids, new FlipParts(ids)));
    }
}
