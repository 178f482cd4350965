package org.sagwise.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Whether two benches are the same circuit.
 *
 * @param own terminals of the bench, by those of the other
 */
record SameCircuit(Scenario bench, Map<TerminalRef, TerminalRef> own) {

    /** Whether another bench is this circuit. */
    boolean holds(Scenario made) {
        return made.fired() == bench.fired()
                && made.ambientC() == bench.ambientC()
                && sameParts(made)
                && sameJoints(made);
    }

    private boolean sameParts(Scenario made) {
        return made.parts().size() == bench.parts().size()
                && made.parts().stream()
                        .allMatch(part -> Optional.ofNullable(
                                        own.get(part.terminals().get(0)))
                                .flatMap(there -> bench.part(there.part()))
                                .filter(there -> SaidKeys.of(there)
                                        .values()
                                        .equals(SaidKeys.of(part).values()))
                                .isPresent());
    }

    private boolean sameJoints(Scenario made) {
        List<Link> left = new ArrayList<>(bench.links());
        for (Link link : made.links()) {
            TerminalRef from = own.get(link.from());
            TerminalRef to = own.get(link.to());
            boolean taken = from != null
                    && to != null
                    && left.stream()
                            .filter(it -> it.joins(from, to) && JointWords.same(it.joint(), link.joint()))
                            .findFirst()
                            .map(left::remove)
                            .orElse(false);
            if (!taken) {
                return false;
            }
        }
        return left.isEmpty();
    }
}
