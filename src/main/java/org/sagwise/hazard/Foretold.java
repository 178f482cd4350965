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
 * @param isOnce whether the first is told alone, since it stands for all of a row
 */
record Foretold(List<RunEvent.Kind> kinds, Signal signal, Set<String> known, boolean isOnce) implements Bearing {

    static Foretold on(RunEvent.Kind... kinds) {
        return new Foretold(List.of(kinds), Signal.NOTICE, Set.of(), false);
    }

    Foretold as(Signal said) {
        return new Foretold(kinds, said, known, isOnce);
    }

    Foretold unless(String... cautions) {
        return new Foretold(kinds, signal, Set.of(cautions), isOnce);
    }

    Foretold once() {
        return new Foretold(kinds, signal, known, true);
    }
}
