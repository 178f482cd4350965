package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/** How mistakes go on with time: stages, in order, with bands that hold what a run shows. */
class HazardTest {

    private static Bench bench(Scenario scenario) {
        return Bench.of(scenario, Circuits.NOTHING);
    }

    private static Part full(String id) {
        return Circuits.cell(id, 4.2, 25);
    }

    private static void assertStagesRise(Forecast forecast, String part) {
        List<Forecast.Stage> stages = forecast.stages().stream()
                .filter(stage -> stage.part().equals(part))
                .toList();
        assertEquals(
                List.of(Kind.TOO_WARM, Kind.LAYER_BREAKDOWN, Kind.VENTED),
                stages.stream().map(Forecast.Stage::kind).toList());
        for (Forecast.Stage stage : stages) {
            assertTrue(stage.earliestS() <= stage.usualS(), stage.toString());
            assertTrue(stage.usualS() <= stage.latestS(), stage.toString());
            assertTrue(stage.earliestS() < stage.latestS(), stage.toString());
        }
        assertTrue(stages.get(0).usualS() < stages.get(1).usualS());
        assertTrue(stages.get(1).usualS() < stages.get(2).usualS());
    }

    @Test
    void outlook_reversedSideBySide_heatsWithNobodyPressing() {
        Scenario sound = Circuits.parallel(1, full("A"), full("B"));

        assertStagesRise(Forecast.of(bench(Circuits.turned(sound, "B")), RunSettings.USUAL, Press.RELEASED), "A");
    }

    @Test
    void outlook_deadShort_heatsOnlyWhilePressed() {
        Bench bench = bench(Circuits.single(full("A"), 0.002));

        assertStagesRise(Forecast.of(bench, RunSettings.USUAL, Press.HELD), "A");
        assertEquals(
                List.of(), Forecast.of(bench, RunSettings.USUAL, Press.RELEASED).stages());
    }

    /** Heat that stays inside: i²R over the heat capacity, nothing lost in so short a time. */
    @Test
    void outlook_deadShort_isAsSlowAsItsHeatCapacityMakesIt() {
        Bench bench = bench(Circuits.single(full("A"), 0.025));
        var thermal = bench.cells().get("A").thermal();
        double kelvinPerS = 84 * 84 * 0.025 / thermal.heatCapacityJPerK();

        Forecast forecast = Forecast.of(bench, RunSettings.USUAL, Press.HELD);

        // From 25 °C to the 75 °C that high-drain cells may have.
        assertEquals(50 / kelvinPerS, forecast.stages().get(0).usualS(), 0.2 * 50 / kelvinPerS);
    }

    @Test
    void outlook_soundPair_isEmpty() {
        Bench bench = bench(Circuits.parallel(1, full("A"), full("B")));

        assertEquals(
                List.of(), Forecast.of(bench, RunSettings.USUAL, Press.RELEASED).stages());
        assertEquals(
                List.of(), Forecast.of(bench, RunSettings.USUAL, Press.HELD).stages());
    }

    @Test
    void run_vented_goesNoFurther() {
        Scenario turned = Circuits.turned(Circuits.parallel(1, full("A"), full("B")), "B");
        Stepper stepper = new Stepper(bench(turned), RunSettings.USUAL);
        RunState vented = stepper.advance(stepper.start(), Press.RELEASED, 600).state();

        assertTrue(vented.isOver());
        Advance more = stepper.advance(vented, Press.HELD, 60);
        assertEquals(vented.timeS(), more.state().timeS());
    }

    @Test
    void run_thinWireShorted_losesItsInsulationAndMelts() {
        Scenario ring = Scenario.of("Thin", List.of(full("A")), List.of(Circuits.jumper("A.+", "A.-", 30, 60)));

        RunResult result = Runner.run(bench(ring), RunPlan.held(), NO_CUTOFF, RunProgress.NONE);

        assertEquals(RunEnd.WIRE_MELTED, result.end());
        assertTrue(result.events(Kind.WIRE_HOT).get(0).atS()
                < result.events(Kind.WIRE_MELTED).get(0).atS());
        assertEquals(0, result.last().cells().get(0).currentA());
    }

    private static final RunSettings NO_CUTOFF = RunSettings.USUAL.withCutoffV(-10);

    @Test
    void run_coilBeyondItsPower_isTold() {
        Part coil = Part.of("coil", PartKind.COIL, "ohm", 0.2, "limit_W", 50);
        Scenario ring = Circuits.single(full("A"), 0.2);
        Bench bench = bench(ring.withParts(List.of(full("A"), Circuits.button(0), coil)));

        RunEvent told =
                Runner.run(bench, RunPlan.USUAL).events(Kind.COIL_OVER_LIMIT).get(0);

        double ampere = 4.2 / 0.225;
        assertEquals(ampere * ampere * 0.2, told.measured(), 1e-6);
        assertEquals(50, told.limit());
    }

    @Test
    void run_cellsInRowOfThreeOneReversed_chargesTheReversedOne() {
        Scenario row = Circuits.series(2, full("A"), full("B"), full("C"));
        Bench bench = bench(Circuits.turned(row, "B"));
        Stepper stepper = new Stepper(bench, RunSettings.USUAL);

        RunState pressed = stepper.advance(stepper.start(), Press.HELD, 300).state();

        assertTrue(pressed.cells().get(1).currentA() < -1);
        assertTrue(pressed.cells().get(1).charge() > 1);
        assertTrue(pressed.has(Kind.OVERCHARGED, "B"));
    }
}
