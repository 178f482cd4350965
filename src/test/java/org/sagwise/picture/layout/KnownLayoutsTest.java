package org.sagwise.picture.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.FlipParts;

/** What is remembered must be what would be found anew, also after an edit that changes numbers, names or modes. */
class KnownLayoutsTest {

    /** Keys that a part may get, whatever its kind: a layout that asked any of them would show here. */
    private static final Map<PartKind, Map<String, Object>> CHANGES = Map.of(
            PartKind.CELL, Map.of("charge", 0.31, "wrap", "torn", "label", "another"),
            PartKind.COIL, Map.of("ohm", 0.77, "label", "wound anew"),
            PartKind.SWITCH, Map.of("stuck", "closed"),
            PartKind.METER, Map.of("mode", "amps"));

    static Stream<Scenario> benches() {
        return BenchLayoutTest.benches();
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_aBenchThatWasChanged_isWhatALayoutWithoutMemorySays(Scenario scenario) {
        for (Drawing drawing : Drawing.values()) {
            KnownLayouts layouts = new KnownLayouts();
            List<Scenario> ways = Stream.of(scenario, changed(scenario), turned(scenario), joinedOtherwise(scenario))
                    .flatMap(bench -> Stream.of(bench, scenario))
                    .toList();
            for (Scenario bench : ways) {
                assertEquals(BenchLayout.of(bench, 2, drawing), layouts.of(bench, 2, drawing));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_aBenchThatComesBack_leadsNoConductorAnew(Scenario scenario) {
        KnownLayouts layouts = new KnownLayouts();
        BenchLayout first = layouts.of(scenario, 1, Drawing.BENCH);
        layouts.of(turned(scenario), 1, Drawing.BENCH);
        assertSame(first.conductors(), layouts.of(scenario, 1, Drawing.BENCH).conductors());
    }

    private static Scenario changed(Scenario scenario) {
        List<Part> parts =
                scenario.parts().stream().map(KnownLayoutsTest::changed).toList();
        return scenario.withParts(parts);
    }

    private static Part changed(Part part) {
        Part changed = part;
        for (var entry : CHANGES.getOrDefault(part.kind(), Map.of()).entrySet()) {
            changed = changed.with(entry.getKey(), entry.getValue());
        }
        return changed;
    }

    private static Scenario turned(Scenario scenario) {
        return scenario.partsOf(PartKind.CELL).stream()
                .findFirst()
                .map(cell -> new FlipParts(Set.of(cell.id())).apply(scenario))
                .orElse(scenario);
    }

    private static Scenario joinedOtherwise(Scenario scenario) {
        return scenario.withLinks(scenario.links().stream()
                .map(link -> Link.jumper(link.from(), link.to(), 22, 150))
                .toList());
    }
}
