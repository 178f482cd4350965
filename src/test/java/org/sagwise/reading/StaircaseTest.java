package org.sagwise.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.fixture.Circuits.NOTHING;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.parallel;
import static org.sagwise.fixture.Circuits.series;
import static org.sagwise.fixture.Circuits.single;
import static org.sagwise.fixture.Circuits.touch;
import static org.sagwise.fixture.Circuits.turned;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

class StaircaseTest {

    private static final double EXACT = 1e-9;

    private static Staircase stairs(Scenario scenario) {
        return Staircase.of(Bench.of(scenario, NOTHING));
    }

    private static double sum(List<Staircase.Step> steps) {
        return steps.stream().mapToDouble(Staircase.Step::riseV).sum();
    }

    private static List<Staircase.Kind> kinds(List<Staircase.Step> steps) {
        return steps.stream().map(Staircase.Step::kind).toList();
    }

    @Test
    void of_singleCell_climbsSagsAndFallsThroughTheCoil() {
        Staircase stairs = stairs(single(cell("A", 4.2, 30), 0.5));
        assertEquals(
                List.of(Staircase.Kind.CELL, Staircase.Kind.SAG, Staircase.Kind.SWITCH, Staircase.Kind.COIL),
                kinds(stairs.steps()));
        assertEquals(4.2, stairs.steps().get(0).riseV(), EXACT);
        assertEquals(-0.030 * 4.2 / 0.530, stairs.steps().get(1).riseV(), EXACT);
        assertEquals(0, sum(stairs.steps()), EXACT);
        assertEquals(0, stairs.steps().get(0).fromV(), EXACT);
    }

    @Test
    void of_twoInParallel_showsTheSecondAsALane() {
        Staircase stairs = stairs(parallel(0.5, cell("A", 4.2, 30), cell("B", 4.1, 30)));
        assertEquals(1, stairs.lanes().size());
        Staircase.Lane lane = stairs.lanes().get(0);
        assertEquals(sum(stairs.steps().subList(lane.afterStep(), lane.untilStep())), sum(lane.steps()), EXACT);
        assertEquals(List.of(Staircase.Kind.CELL, Staircase.Kind.SAG), kinds(lane.steps()));
    }

    @Test
    void of_threeInSeriesOneReversed_stepsDownInTheMiddle() {
        Staircase stairs = stairs(turned(series(4.0, cell("A", 4.2, 20), cell("B", 4.2, 20), cell("C", 4.2, 20)), "B"));
        List<Double> rises = stairs.steps().stream()
                .filter(step -> step.kind() == Staircase.Kind.CELL)
                .map(Staircase.Step::riseV)
                .toList();
        assertEquals(3, rises.size());
        assertEquals(-4.2, rises.get(1), EXACT);
        assertEquals(0, sum(stairs.steps()), EXACT);
    }

    @Test
    void of_buttonLetGo_keepsTheWayAndHoldsAllVoltsAcrossTheGap() {
        Staircase stairs = stairs(single(cell("A", 4.2, 30), 0.5).released());
        Staircase.Step gap = stairs.steps().stream()
                .filter(step -> step.kind() == Staircase.Kind.GAP)
                .findFirst()
                .orElseThrow();
        assertEquals(-4.2, gap.riseV(), EXACT);
        assertEquals(0, sum(stairs.steps()), EXACT);
    }

    @Test
    void of_reversedInParallel_showsTheLoopBetweenTheCells() {
        Scenario scenario = turned(parallel(1.0, cell("A", 4.2, 20), cell("B", 4.2, 20)), "B")
                .released();
        Staircase stairs = stairs(scenario);
        assertEquals(0, sum(stairs.steps()), EXACT);
        assertEquals(
                2,
                stairs.steps().stream()
                        .filter(step -> step.kind() == Staircase.Kind.CELL)
                        .count());
    }

    @Test
    void of_nothingOnTheBench_isFlat() {
        assertTrue(stairs(Scenario.empty()).steps().isEmpty());
    }

    @Test
    void of_contactsBetween_areStepsOfTheirOwn() {
        Scenario base = single(cell("A", 4.2, 30), 0.5);
        Scenario scenario = base.withLinks(
                List.of(touch("A.+", "fire.1", 5), touch("fire.2", "coil.1", 5), touch("coil.2", "A.-", 5)));
        List<Staircase.Step> steps = stairs(scenario).steps();
        assertEquals(
                3,
                steps.stream().filter(s -> s.kind() == Staircase.Kind.CONTACT).count());
        assertFalse(steps.stream().anyMatch(step -> Double.isNaN(step.riseV())));
        assertEquals(0, sum(steps), EXACT);
    }

    @Test
    void of_clipAcrossTheCoil_hasALaneOfItsOwn() {
        Scenario scenario = single(cell("A", 4.2, 30), 0.5)
                .plus(touch("coil.1", "coil.2", 10))
                .pressed();
        Staircase stairs = stairs(scenario);
        assertEquals(
                List.of(List.of(Staircase.Kind.CONTACT)),
                stairs.lanes().stream().map(lane -> kinds(lane.steps())).toList());
    }

    @Test
    void of_boardBehindAnOpenButton_leavesTheVoltsAtTheGap() {
        Scenario scenario = Scenario.of(
                "Board",
                List.of(
                        cell("A", 4.0, 20),
                        Part.of("fire", PartKind.SWITCH),
                        Part.of("board", PartKind.BOARD, "power_W", 10),
                        coil(1.0)),
                List.of(
                        ideal("A.+", "fire.1"),
                        ideal("fire.2", "board.in+"),
                        ideal("board.in-", "A.-"),
                        ideal("board.out+", "coil.1"),
                        ideal("coil.2", "board.out-")));
        Staircase stairs = stairs(scenario);
        Staircase.Step gap = stairs.steps().stream()
                .filter(step -> step.kind() == Staircase.Kind.GAP)
                .findFirst()
                .orElseThrow();
        assertEquals(-4.0, gap.riseV(), EXACT);
        assertEquals(0, sum(stairs.steps()), EXACT);
    }

    @Test
    void of_twoEqualCellsFacingEachOther_goesUpAndDownAgainThoughNothingFlows() {
        Staircase stairs = stairs(turned(series(4.0, cell("A", 4.2, 20), cell("B", 4.2, 20)), "B"));
        List<Double> rises = stairs.steps().stream()
                .filter(step -> step.kind() == Staircase.Kind.CELL)
                .map(step -> Math.abs(step.riseV()))
                .toList();
        assertEquals(List.of(4.2, 4.2), rises);
        assertEquals(0, sum(stairs.steps()), EXACT);
        assertEquals(4.2, stairs.highestV() - stairs.lowestV(), EXACT);
    }

    @Test
    void of_ringWithAJointMissing_climbsAndHoldsAllVoltsAcrossTheMissingJoint() {
        Scenario whole = single(cell("A", 4.2, 30), 0.5);
        Staircase stairs = stairs(whole.withLinks(whole.links().subList(0, 2)));
        Staircase.Step last = stairs.steps().get(stairs.steps().size() - 1);
        assertEquals(4.2, stairs.steps().get(0).riseV(), EXACT);
        assertEquals(Staircase.Kind.GAP, last.kind());
        assertEquals("", last.part());
        assertEquals(-4.2, last.riseV(), EXACT);
        assertEquals(0, sum(stairs.steps()), EXACT);
    }

    @Test
    void of_twoCellsInARowWithNothingElse_climbsBoth() {
        Scenario scenario =
                Scenario.of("Row", List.of(cell("A", 4.2, 20), cell("B", 4.1, 20)), List.of(ideal("A.+", "B.-")));
        assertEquals(8.3, stairs(scenario).highestV(), EXACT);
    }
}
