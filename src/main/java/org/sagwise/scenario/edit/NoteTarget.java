package org.sagwise.scenario.edit;

import java.util.Optional;
import java.util.stream.IntStream;
import org.sagwise.scenario.JointName;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.PartName;
import org.sagwise.scenario.Scenario;

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
        public Object name(Scenario scenario) {
            return PartName.of(scenario, part);
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
        public Object name(Scenario scenario) {
            return isIn(scenario) ? JointName.of(scenario, scenario.links().get(link)) : "";
        }
    }

    boolean isIn(Scenario scenario);

    /** The name of the part or the joint, as {@link org.sagwise.scenario.Names#word} says it. */
    Object name(Scenario scenario);

    /** What a note of a scenario speaks of; empty for a note that is not there. */
    static Optional<NoteTarget> of(Scenario scenario, int note) {
        if (note < 0 || note >= scenario.notes().size()) {
            return Optional.empty();
        }
        Note written = scenario.notes().get(note);
        return scenario.part(written.on()).isPresent()
                ? Optional.of(new OnPart(written.on()))
                : IntStream.range(0, scenario.links().size())
                        .filter(place -> scenario.links().get(place).id().equals(Optional.of(written.on())))
                        .mapToObj(OnJoint::new)
                        .map(NoteTarget.class::cast)
                        .findFirst();
    }
}
