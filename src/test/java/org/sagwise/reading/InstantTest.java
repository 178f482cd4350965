package org.sagwise.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.sagwise.fixture.Circuits.NOTHING;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.parallel;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.sagwise.scenario.Press;

class InstantTest {

    private static final double EXACT = 1e-9;

    private final Bench bench = Bench.of(parallel(0.5, cell("A", 4.2, 30), cell("B", 4.1, 30)), NOTHING);
    private final Instant held = Instant.start(bench, Press.HELD);

    @Test
    void then_letGoLater_keepsTheWayAndTakesTheHeightsAnew() {
        Instant later = held.then(rested(Map.of("A", 3.9, "B", 4.0)), Press.RELEASED);

        assertEquals("A", firstPart(held));
        assertEquals("A", firstPart(later));
        assertEquals(3.9, later.staircase().steps().get(0).riseV(), EXACT);
        assertEquals(0, sum(later.staircase().steps()), EXACT);
    }

    @Test
    void then_heldLater_followsTheCurrentAsItIsThen() {
        Instant later = held.then(rested(Map.of("A", 3.9, "B", 4.0)), Press.HELD);

        assertEquals("B", firstPart(later));
    }

    @Test
    void then_letGoAfterSomethingOpened_findsTheWayAnew() {
        States start = rested(Map.of("A", 3.9, "B", 4.0));
        States opened = new States(start.cells(), Map.of(), Map.of(), Set.of(), melted(Set.of("coil")));
        Instant later = held.then(opened, Press.RELEASED);

        assertNotEquals(
                held.then(start, Press.RELEASED).staircase().steps(),
                later.staircase().steps());
    }

    @Test
    void then_backAtTheStart_isAsAtTheStart() {
        Instant later = held.then(rested(Map.of("A", 3.9, "B", 4.0)), Press.RELEASED);

        assertEquals(
                Instant.start(bench, Press.RELEASED).staircase(),
                later.then(bench.start(), Press.RELEASED).staircase());
    }

    private static Broken melted(Set<String> coils) {
        return new Broken(coils, Set.of(), Set.of());
    }

    private States rested(Map<String, Double> restV) {
        Map<String, CellState> cells = new HashMap<>();
        bench.start()
                .cells()
                .forEach((id, at) -> cells.put(
                        id,
                        new CellState(at.charge(), restV.get(id), at.polarisationV(), at.temperatureC(), at.guard())));
        return new States(cells, Map.of(), Map.of(), Set.of());
    }

    private static String firstPart(Instant instant) {
        return instant.staircase().steps().get(0).part();
    }

    private static double sum(List<Staircase.Step> steps) {
        return steps.stream().mapToDouble(Staircase.Step::riseV).sum();
    }
}
