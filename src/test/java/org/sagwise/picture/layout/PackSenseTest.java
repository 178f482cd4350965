package org.sagwise.picture.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.parallel;
import static org.sagwise.fixture.Circuits.series;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.ArrangeCells;
import org.sagwise.scenario.edit.DeleteParts;
import org.sagwise.scenario.edit.FlipParts;

/** Whether the cells of a pack climb the same way, however they are laid out. */
class PackSenseTest {

    private static final List<String> SIX = List.of("A", "B", "C", "D", "E", "F");

    private static Scenario six() {
        return parallel(1, SIX.stream().map(id -> cell(id, 4.2, 30)).toArray(Part[]::new));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 6})
    void isOne_soundPacks_areOneOpenAndClosed(int rows) {
        Scenario closed = new ArrangeCells(SIX, rows, 4).apply(six());
        Scenario open = new DeleteParts(Set.of("coil", "fire")).apply(closed);
        for (String id : SIX) {
            assertTrue(PackSense.isOne(closed, id));
            assertTrue(PackSense.isOne(open, id));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 6})
    void isOne_oneCellFlipped_isNot(int rows) {
        Scenario closed = new ArrangeCells(SIX, rows, 4).apply(six());
        Scenario flipped = new FlipParts(Set.of("B")).apply(closed);
        Scenario open = new DeleteParts(Set.of("coil", "fire")).apply(flipped);
        assertFalse(PackSense.isOne(flipped, "B"));
        assertFalse(PackSense.isOne(open, "E"));
    }

    @Test
    void isOne_pairInSeriesOneFlipped_isNot() {
        Scenario pair = series(4, cell("A", 4.2, 30), cell("B", 4.2, 30));
        Scenario flipped = new FlipParts(Set.of("B")).apply(pair);
        assertTrue(PackSense.isOne(pair, "A"));
        assertFalse(PackSense.isOne(flipped, "B"));
    }

    @Test
    void isOne_looseCells_areEachOne() {
        Scenario loose = Scenario.of("", List.of(cell("A", 4, 1), cell("B", 4, 1)), List.<Link>of());
        assertEquals(
                2, Stream.of("A", "B").filter(id -> PackSense.isOne(loose, id)).count());
        assertFalse(PackSense.isOne(loose.plus(ideal("A.+", "B.-")).plus(ideal("B.+", "A.-")), "A"));
    }
}
