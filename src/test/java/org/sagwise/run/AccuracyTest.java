package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Circuits;
import org.sagwise.fixture.Packs;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Press;

/** The usual steps against a reference whose steps may make a thousandth of the error. */
class AccuracyTest {

    private static final RunSettings FINE = RunSettings.USUAL.withFineness(1e-3);

    private static Bench pair() {
        return Bench.of(
                Circuits.parallel(0.3, Circuits.cell("A", 4.2, 25), Circuits.cell("B", 4.15, 40)), Circuits.NOTHING);
    }

    private static void assertSameCourse(Bench bench) {
        RunResult usual = Runner.run(bench, RunPlan.USUAL);
        RunResult fine = Runner.run(bench, RunPlan.USUAL, FINE, RunProgress.NONE);

        assertEquals(
                fine.last().firedS(), usual.last().firedS(), 1e-3 * fine.last().firedS());
        for (int part = 1; part < 10; part++) {
            assertSameVolts(fine, usual, fine.trace().endS() * part / 10.0 - part);
        }
        // Inside presses, where wound coils warm: moments of the first, of some in the middle and of the last.
        double lastS = Math.floor(fine.trace().endS() / 30) * 30;
        for (double pressS : new double[] {0, 30, 60, 600, Math.floor(lastS / 60) * 30, lastS - 30}) {
            for (double insideS :
                    new double[] {0.01, 0.03, 0.066, 0.1, 0.15, 0.24, 0.4, 0.7, 1, 1.5, 2, 2.9, 3.1, 10}) {
                assertSameVolts(fine, usual, pressS + insideS);
            }
        }
    }

    private static void assertSameVolts(RunResult fine, RunResult usual, double timeS) {
        RunState expected = fine.trace().stateAt(timeS);
        RunState state = usual.trace().stateAt(timeS);
        for (int k = 0; k < expected.cells().size(); k++) {
            assertEquals(
                    expected.cells().get(k).terminalV(), state.cells().get(k).terminalV(), 1e-3, "at " + timeS);
        }
    }

    @Test
    void run_mismatchedPair_agreesWithFineSteps() {
        assertSameCourse(pair());
    }

    @Test
    void run_nickelCoil_agreesWithFineSteps() {
        assertSameCourse(HotCoils.nickelOnCell(Circuits.cell("A", 4.2, 20)));
    }

    @Test
    void run_steelCoil_agreesWithFineSteps() {
        assertSameCourse(HotCoils.steelOnCell(Circuits.cell("A", 4.2, 20)));
    }

    @Test
    void run_twoByTwo_agreesWithFineSteps() {
        assertSameCourse(Bench.of(Packs.of(2, 2), Circuits.NOTHING));
    }

    @Test
    void advance_restOfAnHour_takesAHandfulOfSteps() {
        Stepper stepper = new Stepper(pair(), RunSettings.USUAL);
        RunState used = stepper.advance(stepper.start(), Press.HELD, 60).state();

        assertTrue(stepper.advance(used, Press.RELEASED, 27).passed().size() <= 8);
        assertTrue(stepper.advance(used, Press.RELEASED, 3600).passed().size() <= 60);
    }
}
