package org.sagwise.scenario.edit;

import java.util.Set;
import java.util.stream.IntStream;
import org.sagwise.scenario.Scenario;

/**
 * Takes notes away.
 *
 * @param notes their places in the scenario
 */
public record DeleteNotes(Set<Integer> notes) implements Edit {

    public DeleteNotes {
        notes = Set.copyOf(notes);
    }

    @Override
    public Scenario apply(Scenario before) {
        return before.withNotes(IntStream.range(0, before.notes().size())
                .filter(place -> !notes.contains(place))
                .mapToObj(before.notes()::get)
                .toList());
    }

    @Override
    public EditName name(Scenario before) {
        return notes.size() == 1
                ? EditName.of(
                        "note.delete",
                        NoteTarget.of(before, notes.iterator().next())
                                .map(it -> it.name(before))
                                .orElse(""))
                : EditName.of("note.delete.many", String.valueOf(notes.size()));
    }
}
