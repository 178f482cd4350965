package org.sagwise.hazard;

import java.util.List;
import java.util.Set;
import org.sagwise.run.RunEvent;

/**
 * That a hazard is found by looking ahead: an event of the run is worth a caution.
 *
 * @param kinds the events
 * @param signal how grave it is
 * @param known ids of cautions that say as much about the same part already
 */
record Foretold(List<RunEvent.Kind> kinds, Signal signal, Set<String> known) implements Bearing {

    static Foretold on(RunEvent.Kind... kinds) {
        return new Foretold(List.of(kinds), Signal.NOTICE, Set.of());
    }

    Foretold as(Signal said) {
        return new Foretold(kinds, said, known);
    }

    Foretold unless(String... cautions) {
        return new Foretold(kinds, signal, Set.of(cautions));
    }
}
