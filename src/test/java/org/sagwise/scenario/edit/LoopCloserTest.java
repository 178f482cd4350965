package org.sagwise.scenario.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.sagwise.fixture.Circuits.NOTHING;
import static org.sagwise.fixture.Circuits.button;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.touch;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.part.PartKind;
import org.sagwise.plan.NextStep;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Cells, coil and button become a circuit by one edit. */
class LoopCloserTest {

    private static final List<Part> PARTS = List.of(cell("A", 4.2, 22), cell("B", 4.2, 22), button(3), coil(1));

    private static Scenario arranged(int rows, List<Part> parts, Link... links) {
        Scenario before = Scenario.of("Loose", parts, List.of(links));
        return new ArrangeCells(List.of("A", "B"), rows, 4).apply(before);
    }

    private static NextStep next(Scenario scenario) {
        return NextStep.of(Bench.of(scenario, NOTHING));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void arrange_looseCoilAndButton_closesTheLoop(int rows) {
        Scenario closed = arranged(rows, PARTS);

        assertEquals(NextStep.NONE, next(closed));
        assertEquals(rows == 1 ? 5 : 4, closed.links().size());
    }

    @Test
    void arrange_halfBuilt_joinsWhatIsMissing() {
        assertEquals(NextStep.NONE, next(arranged(1, PARTS, touch("fire.2", "coil.1", 4))));
        assertEquals(NextStep.NONE, next(arranged(1, PARTS, touch("A.-", "coil.1", 4))));
        assertEquals(NextStep.NONE, next(arranged(2, PARTS, touch("A.-", "fire.2", 4))));
        assertEquals(NextStep.NONE, next(arranged(1, PARTS, touch("A.+", "coil.1", 4))));
    }

    @Test
    void arrange_oneCellWithLooseCoilAndButton_closesTheLoopAndOnlyThen() {
        Scenario one = Scenario.of("one", List.of(PARTS.get(0), PARTS.get(2), PARTS.get(3)), List.of());
        Scenario closed = new ArrangeCells(List.of("A"), 1, 4).apply(one);

        assertEquals(NextStep.NONE, next(closed));
        assertEquals(3, closed.links().size());
        assertEquals(closed, new ArrangeCells(List.of("A"), 1, 4).apply(closed));
    }

    @Test
    void arrange_withoutAButton_closesNothing() {
        Scenario open = arranged(1, List.of(PARTS.get(0), PARTS.get(1), PARTS.get(3)));

        assertFalse(open.links().stream().anyMatch(link -> link.touches("coil")));
    }

    /** A spare coil that lies beside a circuit is left alone. */
    @Test
    void arrange_circuitThatIsClosed_leavesSparesAlone() {
        Scenario closed = arranged(1, PARTS);
        Scenario more = closed.plus(Part.of("spare", PartKind.COIL, "ohm", 2.0))
                .plus(Part.of("other", PartKind.SWITCH, "closed_mohm", 3.0));
        Scenario after = new ArrangeCells(List.of("A", "B"), 2, 4).apply(more);

        assertEquals(NextStep.NONE, next(after));
        assertFalse(after.links().stream().anyMatch(link -> link.touches("spare") || link.touches("other")));
    }
}
