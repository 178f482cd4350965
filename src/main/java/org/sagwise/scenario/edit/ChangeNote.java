package org.sagwise.scenario.edit;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/**
 * Lets a note say something else, or lays it elsewhere.
 *
 * @param note its place in the scenario
 * @param change what of it changes
 */
public record ChangeNote(int note, Change change) implements Edit {

    /** What of a note can change. */
    public sealed interface Change {}

    /**
     * What it says.
     *
     * @param text at most 4,000 characters; the rest is cut off
     */
    public record Text(String text) implements Change {
        public Text {
            text = ScenarioKeys.NOTE_TEXT.cut(text.strip());
        }
    }

    /**
     * Where it lies.
     *
     * @param dx grid units to the right of the middle of what it speaks of
     * @param dy grid units below it
     */
    public record Place(double dx, double dy) implements Change {}

    @Override
    public Scenario apply(Scenario before) {
        if (note < 0 || note >= before.notes().size()) {
            return before;
        }
        Note old = before.notes().get(note);
        List<Note> notes = new ArrayList<>(before.notes());
        if (change instanceof Text words) {
            if (words.text().isEmpty()) {
                return before;
            }
            notes.set(note, old.saying(words.text()));
        } else if (change instanceof Place place) {
            notes.set(note, old.lying(within(place.dx()), within(place.dy())));
        }
        return before.withNotes(notes);
    }

    private static double within(double far) {
        return ScenarioKeys.NOTE_AWAY.allows(far) ? far : Math.copySign(ScenarioKeys.NOTE_AWAY.most(), far);
    }

    @Override
    public EditName name(Scenario before) {
        String key = change instanceof Text ? "note.change" : "note.move";
        return EditName.of(
                key, NoteTarget.of(before, note).map(it -> it.name(before)).orElse(""));
    }
}
