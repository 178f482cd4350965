package org.sagwise.scenario.edit;

import org.sagwise.scenario.Scenario;

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
                CutLinks,
                DeleteNotes,
                DeleteParts,
                DuplicateParts,
                FlipParts,
                JoinTerminals,
                MeterInLine,
                PasteParts,
                PlaceParts,
                SetAmbient,
                SetLinkKeys,
                SetPartKeys,
                SetProbes,
                SetTexts,
                Together,
                TurnParts {

    Scenario apply(Scenario before);

    /** What this edit of that scenario is called. */
    EditName name(Scenario before);
}
