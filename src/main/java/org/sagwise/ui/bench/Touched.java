package org.sagwise.ui.bench;

import java.util.Optional;
import org.sagwise.interaction.Selection;
import org.sagwise.scenario.TerminalRef;

/** What lies under a touch node. */
sealed interface Touched {

    /** A part. */
    record Whole(String id) implements Touched {}

    /** A terminal. */
    record End(TerminalRef terminal) implements Touched {}

    /** A note, by its place in the scenario. */
    record Slip(int note) implements Touched {}

    /** The part that it is or belongs to. */
    default Optional<String> part() {
        if (this instanceof Whole whole) {
            return Optional.of(whole.id());
        }
        return this instanceof End end ? Optional.of(end.terminal().part()) : Optional.empty();
    }

    /** Where Tab stops for it: a terminal belongs to its part. */
    default Touched stop() {
        return this instanceof End end ? new Whole(end.terminal().part()) : this;
    }

    /** What is meant by pointing at it. */
    default Selection lit() {
        return this instanceof Slip slip ? Selection.note(slip.note()) : Selection.part(part().orElseThrow());
    }
}
