package org.sagwise.assessment.fix;

import java.util.List;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.SetPartKeys;

/** Puts a cell just like the better one of a mixed pair in place of the other. */
final class LikeCell implements FixRule {

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        if (caution.parts().size() < 2) {
            return List.of();
        }
        boolean moreIsWorse = caution.id().equals("mixed-resistance");
        String worse = caution.parts().get(moreIsWorse ? 1 : 0);
        String better = caution.parts().get(moreIsWorse ? 0 : 1);
        Scenario scenario = assessment.scenario();
        Part model = scenario.part(better).orElseThrow();
        Part old = scenario.part(worse).orElseThrow();
        if (model.kind() != PartKind.CELL || old.kind() != PartKind.CELL) {
            return List.of();
        }
        return List.of(fix(old, model));
    }

    /** A cell just like a model in place of another. */
    static Fix fix(Part old, Part model) {
        return new Fix(
                FixKind.LIKE_CELL, List.of(List.of(old), List.of(model)), Set.of(old.id()), instead(old, like(model)));
    }

    /** What a cell says of itself, in place of all that an old one did. */
    static Edit instead(Part old, Keys keys) {
        return new SetPartKeys(old.id(), keys, old.keys().values().keySet());
    }

    /** All keys of the model but what makes it this one part. */
    private static Keys like(Part model) {
        return model.keys().without("id", "kind", "label", "mark", "married", "married_cells", Keys.FOREIGN);
    }
}
