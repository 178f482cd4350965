package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.sagwise.fixture.Circuits.NOTHING;

import java.util.List;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Scenario;

/** Asks a scenario for its cautions. */
final class Found {

    private Found() {}

    static List<Caution> in(Scenario scenario) {
        return Hazards.check(Bench.of(scenario, NOTHING));
    }

    static List<String> ids(Scenario scenario) {
        return in(scenario).stream().map(Caution::id).toList();
    }

    /** The one caution that a scenario gives rise to. */
    static Caution only(String id, Scenario scenario) {
        List<Caution> found = in(scenario);
        assertEquals(List.of(id), found.stream().map(Caution::id).toList());
        return found.get(0);
    }

    /** The caution of a hazard beside whatever else is found. */
    static Caution one(String id, Scenario scenario) {
        return in(scenario).stream()
                .filter(caution -> caution.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id + " not among " + ids(scenario)));
    }
}
