package org.sagwise.scenario.edit;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/**
 * Writes a note on a part or a joint. A joint that has no id gets one, since a note goes by it.
 *
 * @param target what it speaks of
 * @param text what it says, at most 4,000 characters; the rest is cut off
 */
public record AddNote(NoteTarget target, String text) implements Edit {

    public AddNote {
        text = ScenarioKeys.NOTE_TEXT.cut(text.strip());
    }

    @Override
    public Scenario apply(Scenario before) {
        if (text.isEmpty() || !target.isIn(before) || before.notes().size() >= ScenarioKeys.MOST_NOTES) {
            return before;
        }
        return target instanceof NoteTarget.OnJoint joint
                ? onJoint(before, joint.link())
                : with(before, ((NoteTarget.OnPart) target).part());
    }

    private Scenario onJoint(Scenario before, int place) {
        Link link = before.links().get(place);
        if (link.id().isPresent()) {
            return with(before, link.id().get());
        }
        String id = new FreshIds(before).like("joint");
        List<Link> links = new ArrayList<>(before.links());
        links.set(place, Link.of(link.keys().with("id", id)));
        return with(before.withLinks(links), id);
    }

    private Scenario with(Scenario before, String on) {
        List<Note> notes = new ArrayList<>(before.notes());
        notes.add(Note.of(on, text));
        return before.withNotes(notes);
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("note.add", target.name(before));
    }
}
