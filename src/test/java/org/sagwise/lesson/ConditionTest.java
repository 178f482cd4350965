package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.lesson.Condition.Arrangement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.JoinTerminals;

class ConditionTest {

    private static Situation bench(String lesson, String name) {
        Map<String, Scenario> named = LessonFixture.builtIn(lesson).scenarios(Locale.ENGLISH);
        return Situation.of(named.get(name), named, LessonFixture.CATALOGUE);
    }

    @ParameterizedTest
    @CsvSource({
        "04-side-by-side, start, PARALLEL, 2, 0, false",
        "04-side-by-side, pair, PARALLEL, 2, 0, true",
        "04-side-by-side, pair, SERIES, 2, 0, false",
        "04-side-by-side, three, PARALLEL, 3, 0, true",
        "04-side-by-side, three, PARALLEL, 2, 0, false",
        "05-end-to-end, start, SERIES, 2, 0, false",
        "05-end-to-end, row, SERIES, 2, 0, true",
        "05-end-to-end, row, PARALLEL, 2, 0, false",
        "05-end-to-end, three, SERIES, 3, 0, true",
        "14-wrong-way-round, start, SERIES, 2, 1, true",
        "14-wrong-way-round, start, SERIES, 2, 0, false",
        "14-wrong-way-round, three, SERIES, 3, 1, true",
        "14-wrong-way-round, three-good, SERIES, 3, 0, true",
        "14-wrong-way-round, four, SERIES, 4, 1, true",
        "14-wrong-way-round, side, PARALLEL, 2, 1, true",
        "14-wrong-way-round, side-good, PARALLEL, 2, 0, true"
    })
    void layout_ofBench_isJudgedFromItsJoints(
            String lesson, String name, Arrangement kind, int cells, int turned, boolean holds) {
        Condition layout = new Condition.Layout(kind, cells, turned);

        assertEquals(holds, layout.holds(bench(lesson, name)));
    }

    @Test
    void layout_shortedCells_areNeither() {
        Situation pair = bench("04-side-by-side", "pair");
        Scenario shorted = JoinTerminals.ideal(
                        pair.scenario().part("A").orElseThrow().terminal("+"),
                        pair.scenario().part("A").orElseThrow().terminal("-"))
                .apply(pair.scenario());

        assertFalse(new Condition.Layout(Arrangement.PARALLEL, 2, 0).holds(pair.with(shorted)));
    }

    @Test
    void bounds_atTheirEdge_hold() {
        assertTrue(Bounds.around(4.2, 0.042).hold(4.242));
        assertFalse(Bounds.around(4.2, 0.042).hold(4.243));
        assertTrue(new Bounds(1, Double.POSITIVE_INFINITY).hold(1));
    }
}
