package org.sagwise.scenario.edit;

import org.sagwise.scenario.Link;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.PartName;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalName;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a note speaks of. */
public sealed interface NoteTarget {

    /**
     * A part.
     *
     * @param part its id
     */
    record OnPart(String part) implements NoteTarget {
        @Override
        public boolean isIn(Scenario scenario) {
            return scenario.part(part).isPresent();
        }

        @Override
        public List<Object> names(Scenario scenario) {
            return List.of(PartName.of(scenario, part));
        }
    }

    /**
     * A joint.
     *
     * @param link its place in the scenario
     */
    record OnJoint(int link) implements NoteTarget {
        @Override
        public boolean isIn(Scenario scenario) {
            return link >= 0 && link < scenario.links().size();
        }

        @Override
        public List<Object> names(Scenario scenario) {
            if (!isIn(scenario)) {
                return List.of();
            }
            Link joint = scenario.links().get(link);
            return List.of(
                    TerminalName.of(scenario, joint.from()), TerminalName.of(scenario, joint.to()));
        }
    }

    boolean isIn(Scenario scenario);

    /** Names of the part, or of both ends of the joint; a list of names is a name. */
    List<Object> names(Scenario scenario);

    /** What a note of a scenario speaks of; empty for a note that is not there. */
    static Optional<NoteTarget> of(Scenario scenario, int note) {
        if (note < 0 || note >= scenario.notes().size()) {
            return Optional.empty();
        }
        Note written = scenario.notes().get(note);
        return scenario.part(written.on()).isPresent()
                ? Optional.of(new OnPart(written.on()))
                : IntStream.range(0, scenario.links().size())
                        .filter(
                                place ->
                                        scenario.links()
                                                .get(place)
                                                .id()
                                                .equals(Optional.of(written.on())))
                        .mapToObj(OnJoint::new)
                        .map(NoteTarget.class::cast)
                        .findFirst();
    }
}
