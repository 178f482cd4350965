package org.sagwise.scenario.edit;

import java.util.List;
import org.sagwise.scenario.Draft;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;

/**
 * One thing that a person does to a scenario. Pure: the scenario it is given stays as it is, and
 * the same edit of the same scenario gives the same result. Where it makes no sense (a part that is
 * not there, a bench that is full) it changes nothing.
 *
 * <p>Edits that move parts go by the places written in the scenario; a part that lies where the
 * program put it has none, so {@link PlaceParts} comes first.
 */
public sealed interface Edit
        permits AddNote,
                AddPart,
                AlignParts,
                ArrangeCells,
                ChangeNote,
                CutBetween,
                CutLinks,
                DeleteNotes,
                DeleteParts,
                DuplicateParts,
                FlipParts,
                FreeParts,
                JoinTerminals,
                MendJoint,
                MeterInLine,
                MoveEnd,
                PasteParts,
                PlaceParts,
                PressButton,
                PutPart,
                SetAmbient,
                SetLinkKeys,
                SetPartKeys,
                SetProbes,
                SetTexts,
                SwapParts,
                Together,
                TurnParts {

    Scenario apply(Scenario before);

    /** What this edit of that scenario is called. */
    EditName name(Scenario before);

    /** What this edit speaks of and that scenario does not have. */
    default List<Finding> missing(Scenario before) {
        return List.of();
    }

    /** Everything that is against making this edit of a sound scenario; empty if it can be made. */
    default List<Finding> refusal(Scenario before, ScenarioRules rules) {
        List<Finding> missing = missing(before);
        return missing.isEmpty() ? rules.check(Draft.of(apply(before))) : missing;
    }

    /** A scenario after several edits, those left out that are refused. */
    static Scenario made(List<Edit> edits, Scenario before, ScenarioRules rules) {
        Scenario after = before;
        for (Edit edit : edits) {
            after = edit.refusal(after, rules).isEmpty() ? edit.apply(after) : after;
        }
        return after;
    }
}
