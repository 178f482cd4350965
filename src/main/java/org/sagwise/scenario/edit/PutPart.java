package org.sagwise.scenario.edit;

import java.util.List;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/**
 * Puts one more part on the bench, wherever the program lays it out. Unlike with {@link AddPart} it
 * keeps its id, by which later edits call it; if that is taken, nothing changes.
 *
 * @param part the part
 */
public record PutPart(Part part) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        return missing(before).isEmpty() && before.parts().size() < ScenarioKeys.MOST_PARTS
                ? before.plus(part)
                : before;
    }

    /** A name of its own. */
    @Override
    public List<Finding> missing(Scenario before) {
        int old = before.parts().stream().map(Part::id).toList().indexOf(part.id());
        return old < 0
                ? List.of()
                : List.of(Finding.of("", Problem.DUPLICATE_ID, part.id(), Places.item("parts", old)));
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("add." + part.kind().word());
    }
}
