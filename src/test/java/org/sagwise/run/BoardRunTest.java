package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/** A regulated board in time: constant watts, rising amps, where it gives up and starts again. */
class BoardRunTest {

    private static Bench board(double watt, double cutoffV, List<Part> cells, List<Link> pack) {
        List<Part> parts = new ArrayList<>(cells);
        parts.add(Circuits.button(0));
        parts.add(Part.of("board", PartKind.BOARD, "power_W", watt, "cutoff_V", cutoffV));
        parts.add(Circuits.coil(1));
        List<Link> links = new ArrayList<>(pack);
        links.add(Circuits.ideal("fire.2", "board.in+"));
        links.add(Circuits.ideal("board.out+", "coil.1"));
        links.add(Circuits.ideal("board.out-", "coil.2"));
        return Bench.of(Scenario.of("Board", parts, links), Circuits.NOTHING);
    }

    private static Bench single(double watt, double cutoffV) {
        return board(
                watt,
                cutoffV,
                List.of(Circuits.cell("A", 4.2, 25)),
                List.of(Circuits.ideal("A.+", "fire.1"), Circuits.ideal("A.-", "board.in-")));
    }

    @Test
    void advance_heldForLong_ampsRiseWhileWattsStay() {
        Stepper stepper = new Stepper(single(15, 2.5), RunSettings.USUAL);

        RunState early = stepper.advance(stepper.start(), Press.HELD, 1).state();
        RunState late = stepper.advance(early, Press.HELD, 900).state();

        assertEquals(15, early.coils().get(0).powerW(), 1e-6);
        assertEquals(15, late.coils().get(0).powerW(), 1e-6);
        assertTrue(late.cells().get(0).currentA() > 1.08 * early.cells().get(0).currentA(), "amps rise as volts sag");
    }

    @Test
    void run_sagBelowTheBoardsCutoff_stopsAndStartsAgainAtTheNextPress() {
        Bench bench = single(40, 3.4);

        RunResult ended = Runner.run(bench, RunPlan.USUAL);
        assertEquals(RunEnd.BOARD, ended.end());
        assertEquals(1, ended.events(Kind.BOARD_CUTOFF).size());

        RunResult pressedOn = Runner.run(bench, RunPlan.USUAL.until(ended.last().timeS() + 100));
        assertTrue(pressedOn.events(Kind.BOARD_CUTOFF).size() >= 3);
    }

    /** The same watts ask the same amps of each cell, side by side or in a row. */
    @Test
    void advance_sameWattsSideBySideAndInARow_asksTheSameOfEachCell() {
        List<Part> cells = List.of(Circuits.cell("A", 4.2, 25), Circuits.cell("B", 4.2, 25));
        Bench sideBySide = board(
                30,
                2.5,
                cells,
                List.of(
                        Circuits.ideal("A.+", "B.+"),
                        Circuits.ideal("A.-", "B.-"),
                        Circuits.ideal("A.+", "fire.1"),
                        Circuits.ideal("A.-", "board.in-")));
        Bench inARow = board(
                30,
                2.5,
                cells,
                List.of(
                        Circuits.ideal("A.+", "B.-"),
                        Circuits.ideal("B.+", "fire.1"),
                        Circuits.ideal("A.-", "board.in-")));

        for (double seconds : new double[] {0, 3, 300}) {
            assertEquals(after(inARow, seconds), after(sideBySide, seconds), 1e-6);
        }
    }

    private static double after(Bench bench, double seconds) {
        Stepper stepper = new Stepper(bench, RunSettings.USUAL);
        return stepper.advance(stepper.start(), Press.HELD, seconds)
                .state()
                .cells()
                .get(0)
                .currentA();
    }
}
