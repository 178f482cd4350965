package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Circuits;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Why cells that work together are kept together. */
class LifeTogetherTest {

    private static List<LifeTogether.Age> course(Scenario scenario) {
        return LifeTogether.course(scenario, Circuits.NOTHING, RunPlan.USUAL, 300, 6);
    }

    private static Part full(String id, double health) {
        return Circuits.cell(id, 4.2, 25).with("health", health);
    }

    private static double apart(LifeTogether.Age age) {
        return age.health().get("A") - age.health().get("B");
    }

    @Test
    void course_marriedPairInARow_agesAlike() {
        List<LifeTogether.Age> course = course(Circuits.series(2, full("A", 1), full("B", 1)));

        assertEquals(7, course.size());
        assertEquals(300, course.get(6).cycles());
        assertEquals(0, apart(course.get(6)), 1e-9);
        assertTrue(course.get(6).health().get("A") < 0.95);
        assertTrue(course.get(6).firedS() < course.get(0).firedS());
    }

    /** The weaker one is emptied further and harder each time, so it falls further behind. */
    @Test
    void course_newAndWornInARow_driftsApart() {
        List<LifeTogether.Age> course = course(Circuits.series(2, full("A", 1), full("B", 0.85)));

        assertEquals(0.15, apart(course.get(0)), 1e-9);
        for (int i = 1; i < course.size(); i++) {
            assertTrue(apart(course.get(i)) > apart(course.get(i - 1)));
        }
        LifeTogether.Age last = course.get(course.size() - 1);
        assertTrue(last.left().get("A") > last.left().get("B"));
    }

    @Test
    void course_newAndWornInARow_lastsNoLongerThanTwoWorn() {
        double mixed =
                course(Circuits.series(2, full("A", 1), full("B", 0.85))).get(0).firedS();
        double worn = course(Circuits.series(2, full("A", 0.85), full("B", 0.85)))
                .get(0)
                .firedS();

        assertEquals(worn, mixed, 0.03 * worn);
    }
}
