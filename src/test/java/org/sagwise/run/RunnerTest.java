package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Circuits;
import org.sagwise.fixture.Packs;
import org.sagwise.part.FuseMelting;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/** The stories that a run has to tell. */
class RunnerTest {

    static Bench bench(Scenario scenario) {
        return Bench.of(scenario, Circuits.NOTHING);
    }

    private static Part full(String id, double mohm) {
        return Circuits.cell(id, 4.2, mohm);
    }

    @Test
    void run_sameCellsSideBySideAndInARow_lastEquallyLong() {
        RunResult sideBySide = Runner.run(bench(Circuits.parallel(1, full("A", 0), full("B", 0))), RunPlan.USUAL);
        RunResult inARow = Runner.run(bench(Circuits.series(4, full("A", 0), full("B", 0))), RunPlan.USUAL);

        assertEquals(RunEnd.CUTOFF, sideBySide.end());
        assertEquals(RunEnd.CUTOFF, inARow.end());
        assertEquals(inARow.last().firedS(), sideBySide.last().firedS(), 0.002);
        assertEquals(inARow.last().presses(), sideBySide.last().presses());
        assertEquals(
                inARow.last().energy().deliveredWh(), sideBySide.last().energy().deliveredWh(), 1e-5);
    }

    /** The shared lead carries twice the current side by side: its loss counts four times. */
    @Test
    void run_samePathResistance_costsMoreSideBySide() {
        RunResult sideBySide =
                Runner.run(bench(withLead(Circuits.parallel(1, full("A", 25), full("B", 25)), 20)), RunPlan.USUAL);
        RunResult inARow =
                Runner.run(bench(withLead(Circuits.series(4, full("A", 25), full("B", 25)), 20)), RunPlan.USUAL);

        double shareSideBySide = sideBySide.last().energy().pathHeatJ()
                / sideBySide.last().energy().deliveredJ();
        double shareInARow =
                inARow.last().energy().pathHeatJ() / inARow.last().energy().deliveredJ();
        assertEquals(4, shareSideBySide / shareInARow, 0.01);
    }

    private static Scenario withLead(Scenario scenario, double mohm) {
        return scenario.withParts(scenario.parts().stream()
                .map(part -> part.id().equals("fire") ? Circuits.button(mohm) : part)
                .toList());
    }

    @Test
    void run_wornAndNewInARow_wornOneStopsTheRun() {
        Bench bench = bench(Circuits.series(2, full("new", 25), full("worn", 25).with("health", 0.7)));

        RunResult result = Runner.run(bench, RunPlan.USUAL);

        assertEquals(RunEnd.CUTOFF, result.end());
        assertEquals("worn", result.events(Kind.CUTOFF).get(0).part());
        CellMoment fresh = result.last().cells().get(0);
        assertTrue(fresh.charge() > 0.25, "the new cell still has " + fresh.charge());
    }

    @Test
    void run_wornInARowPressedOn_isReversedAndCopperDissolves() {
        Bench bench = bench(Circuits.series(2, full("new", 25), full("worn", 25).with("health", 0.7)));

        RunResult result = Runner.run(bench, RunPlan.USUAL.until(20 * 3600));

        List<Kind> worn = result.events().stream()
                .filter(event -> event.part().equals("worn"))
                .map(RunEvent::kind)
                .toList();
        assertEquals(
                List.of(Kind.CUTOFF, Kind.BELOW_LOWEST, Kind.REVERSED, Kind.COPPER_DISSOLVES, Kind.INTERNAL_SHORT),
                worn);
    }

    @Test
    void run_weakBesideStrong_sharesByResistanceAndEvensOutAtRest() {
        Bench bench = bench(Circuits.parallel(0.5, full("A", 20), full("B", 40)));
        Stepper stepper = new Stepper(bench, RunSettings.USUAL);

        RunState pressed = stepper.advance(stepper.start(), Press.HELD, 0).state();
        assertEquals(
                2, pressed.cells().get(0).currentA() / pressed.cells().get(1).currentA(), 1e-9);

        RunState drawn = stepper.advance(pressed, Press.HELD, 300).state();
        double apart = drawn.cells().get(1).charge() - drawn.cells().get(0).charge();
        assertTrue(apart > 0.005, "the better cell gave more, by " + apart);

        RunState rested = stepper.advance(drawn, Press.RELEASED, 3 * 3600).state();
        double left = rested.cells().get(1).charge() - rested.cells().get(0).charge();
        assertTrue(Math.abs(left) < 0.02 * apart, "after a rest they still differ by " + left);
    }

    @Test
    void run_reversedSideBySide_heatsWithTheButtonLetGoAndVents() {
        Scenario sound = Circuits.parallel(1, full("A", 25), full("B", 25));
        Bench bench = bench(Circuits.turned(sound, "B"));
        Stepper stepper = new Stepper(bench, RunSettings.USUAL);

        Advance rest = stepper.advance(stepper.start(), Press.RELEASED, 3600);

        assertEquals(8.4 / 0.05, stepper.start().cells().get(0).currentA(), 1e-6);
        List<Kind> stages = new ArrayList<>();
        for (RunEvent event : rest.events()) {
            if (event.part().equals("A")) {
                stages.add(event.kind());
            }
        }
        assertTrue(
                stages.indexOf(Kind.TOO_WARM) < stages.indexOf(Kind.LAYER_BREAKDOWN)
                        && stages.indexOf(Kind.LAYER_BREAKDOWN) < stages.indexOf(Kind.VENTED)
                        && stages.contains(Kind.TOO_WARM),
                stages.toString());
        assertTrue(rest.state().isOver());
        assertTrue(rest.state().timeS() < 120, "vented after " + rest.state().timeS());
    }

    @Test
    void run_fuseInTheWay_blowsWhenItsHeatIsFull() {
        Scenario ring = Circuits.single(full("A", 20), 0.1);
        Scenario fused = ring.withParts(List.of(
                        full("A", 20),
                        Circuits.button(0),
                        Circuits.coil(0.1),
                        Part.of("fuse", PartKind.FUSE, "rating_A", 10, "mohm", 5, "i2t_A2s", 130)))
                .withLinks(List.of(
                        Circuits.ideal("A.+", "fuse.1"),
                        Circuits.ideal("fuse.2", "fire.1"),
                        Circuits.ideal("fire.2", "coil.1"),
                        Circuits.ideal("coil.2", "A.-")));

        RunResult result = Runner.run(bench(fused), RunPlan.held(), RunSettings.USUAL.withCutoffV(1), RunProgress.NONE);

        assertEquals(RunEnd.FUSE, result.end());
        // 4.2 V on 125 mΩ is 33.6 A; the slow sag lets it fall a little in the 0.13 s it takes.
        double expectedS = new FuseMelting(10, 130).meltingTimeS(4.2 / 0.125);
        assertEquals(expectedS, result.last().timeS(), 0.003);
    }

    @Test
    void run_protectedCellAskedTooMuch_opensAfterItsDelayAndClosesWhenLetGo() {
        Part cell = full("A", 30).with("guard", Keys.of("trip_A", 10, "trip_s", 0.2, "mohm", 20));
        Bench bench = bench(Circuits.single(cell, 0.2));

        RunResult ended = Runner.run(bench, RunPlan.USUAL);
        assertEquals(RunEnd.PROTECTION, ended.end());
        assertEquals(0.2, ended.last().timeS(), 0.0015);

        RunResult pressedOn = Runner.run(bench, RunPlan.USUAL.until(90));
        assertEquals(3, pressedOn.events(Kind.GUARD_CURRENT).size());
        assertEquals(3, pressedOn.events(Kind.GUARD_CLOSED).size());
    }

    @Test
    void run_twentyCells_endsAtCutoffWithABalancedBook() {
        RunResult result = Runner.run(bench(Packs.of(10, 2)), RunPlan.USUAL);

        assertEquals(RunEnd.CUTOFF, result.end());
        EnergyBook book = result.last().energy();
        assertEquals(0, book.missingJ() / book.givenJ(), 1e-6);
    }

    @Test
    void run_openBench_saysThatNothingFlows() {
        Scenario open = Scenario.of("Open", List.of(full("A", 20), Circuits.coil(1)), List.of());

        assertEquals(RunEnd.NO_CURRENT, Runner.run(bench(open), RunPlan.USUAL).end());
    }

    @Test
    void run_beyondItsEffort_isGivenUpAtTheSameMomentEachTime() {
        Bench bench = bench(Packs.of(10, 2));

        RunResult first = givenUp(bench);

        assertEquals(RunEnd.TOO_LONG, first.end());
        assertTrue(first.last().presses() > 0);
        assertEquals(first.last().timeS(), givenUp(bench).last().timeS());
    }

    private static RunResult givenUp(Bench bench) {
        return Runner.run(bench, RunPlan.USUAL, RunSettings.USUAL, RunProgress.NONE, 1e6);
    }

    @Test
    void run_calledOff_endsThere() {
        Bench bench = bench(Circuits.single(full("A", 20), 1));

        RunResult result = Runner.run(bench, RunPlan.USUAL, RunSettings.USUAL, state -> state.presses() < 5);

        assertEquals(RunEnd.CANCELLED, result.end());
        assertEquals(5, result.last().presses());
    }

    @Test
    void stateAt_momentBetweenKeptStates_isTheStateOfThatMoment() {
        Bench bench = bench(Circuits.single(full("A", 20), 0.5));
        RunResult result = Runner.run(bench, RunPlan.USUAL);

        RunState middle = result.trace().stateAt(3001.7);

        assertEquals(3001.7, middle.timeS(), 1e-9);
        assertEquals(101, middle.presses());
        assertEquals(Press.HELD, middle.press());
        double measured = bench.at(middle.states(), middle.press())
                .cell("A")
                .orElseThrow()
                .terminalV();
        assertEquals(middle.cells().get(0).terminalV(), measured, 1e-12);
    }

    @Test
    void stateAt_momentOfATurn_hasTheButtonTurned() {
        RunResult result = Runner.run(bench(Circuits.single(full("A", 20), 0.5)), RunPlan.USUAL);

        assertEquals(Press.HELD, result.trace().stateAt(3000).press());
        assertEquals(Press.RELEASED, result.trace().stateAt(3003).press());
        assertEquals(Press.HELD, result.trace().stateAt(0).press());
        assertEquals(result.last().timeS(), result.trace().stateAt(1e9).timeS());
    }

    @Test
    void run_benchSupplyOnACoil_isSteady() {
        Part supply = Part.of("S", PartKind.SUPPLY, "volts", 4, "internal_ohm", 0.01);
        Scenario ring = Scenario.of(
                "Supply",
                List.of(supply, Circuits.button(3), Circuits.coil(1)),
                List.of(
                        Circuits.ideal("S.+", "fire.1"),
                        Circuits.ideal("fire.2", "coil.1"),
                        Circuits.ideal("coil.2", "S.-")));

        RunResult result = Runner.run(bench(ring), RunPlan.USUAL);

        assertEquals(RunEnd.STEADY, result.end());
        assertTrue(result.last().timeS() < 1000);
    }
}
