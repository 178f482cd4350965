package org.sagwise.scenario.edit;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Drops notes whose part or joint is gone. */
final class Kept {

    private Kept() {}

    static Scenario withNotes(Scenario scenario) {
        Set<String> there = Stream.concat(
                        scenario.parts().stream().map(Part::id),
                        scenario.links().stream().flatMap(link -> link.id().stream()))
                .collect(Collectors.toSet());
        return scenario.withNotes(scenario.notes().stream()
                .filter(note -> there.contains(note.on()))
                .toList());
    }
}
