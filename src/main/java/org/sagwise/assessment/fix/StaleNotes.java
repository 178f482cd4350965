package org.sagwise.assessment.fix;

import java.util.List;
import java.util.Set;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Scenario;

/** Notes about a mistake, which no longer hold once it is mended. */
final class StaleNotes {

    private StaleNotes() {}

    /** The scenario without the notes on what was changed. */
    static Scenario away(Scenario scenario, Set<String> changed) {
        List<Note> kept = scenario.notes().stream()
                .filter(note -> !changed.contains(note.on()))
                .toList();
        return kept.size() == scenario.notes().size() ? scenario : scenario.withNotes(kept);
    }
}
