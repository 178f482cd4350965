package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Charging: constant current, then constant voltage; slow and fast; and a charger that is bad. */
class ChargingTest {

    private static Part used() {
        return Part.of(
                "A",
                PartKind.CELL,
                "charge",
                0.1,
                "internal_mohm",
                25,
                "capacity_mAh",
                2500,
                "limit_A",
                20,
                "charge_limit_A",
                4);
    }

    private static Bench on(Part cell, double ampere, double limitV, double taperA) {
        Part charger = Part.of("charger", PartKind.CHARGER, "current_A", ampere, "limit_V", limitV, "taper_A", taperA);
        return Bench.of(
                Scenario.of(
                        "Charging",
                        List.of(cell, charger),
                        List.of(Circuits.touch("charger.+", "A.+", 10), Circuits.ideal("charger.-", "A.-"))),
                Circuits.NOTHING);
    }

    private static RunResult charge(Bench bench) {
        return Runner.run(bench, RunPlan.USUAL);
    }

    @Test
    void run_goodCharger_holdsCurrentThenVoltageAndStopsAtTaper() {
        RunResult result = charge(on(used(), 1.25, 4.2, 0.125));

        assertEquals(RunEnd.CHARGED, result.end());
        double holdsS = result.events(Kind.CHARGER_HOLDS_VOLTAGE).get(0).atS();
        RunState before = result.trace().stateAt(holdsS - 60);
        assertEquals(-1.25, before.cells().get(0).currentA(), 1e-6);
        assertEquals(0.125, result.events(Kind.CHARGER_DONE).get(0).measured(), 1e-4);
        assertTrue(result.last().cells().get(0).charge() > 0.97);
        assertTrue(result.last().cells().get(0).charge() < 1.0);
        EnergyBook book = result.last().energy();
        assertEquals(0, book.missingJ() / book.givenJ(), 1e-6);
    }

    /** A full cell and one at a fifth in a row: the charger is done when the row has 8.4 V, one cell is overfilled. */
    @Test
    void run_unevenRow_endsOverchargedAndNotJustFinished() {
        Part charger = Part.of("charger", PartKind.CHARGER, "current_A", 1, "limit_V", 8.4);
        Scenario row = Scenario.of(
                "Row",
                List.of(Circuits.cell("A", 4.2, 22), Circuits.cell("B", 3.45, 22), charger),
                List.of(
                        Circuits.ideal("A.-", "B.+"),
                        Circuits.ideal("charger.+", "A.+"),
                        Circuits.ideal("charger.-", "B.-")));
        RunResult result = Runner.run(Bench.of(row, Circuits.NOTHING), RunPlan.USUAL);

        assertEquals(RunEnd.OVERCHARGED, result.end());
        assertEquals("overcharged", result.end().word());
        assertTrue(result.last().cells().get(0).charge() > 1.1);
    }

    @Test
    void run_slowAndFast_fastIsQuickerAndWarmer() {
        RunResult slow = charge(on(used(), 0.5, 4.2, 0.05));
        RunResult fast = charge(on(used(), 2.5, 4.2, 0.05));

        assertTrue(fast.last().timeS() < 0.5 * slow.last().timeS());
        double slowC = slow.last().cells().get(0).peakC() - 25;
        double fastC = fast.last().cells().get(0).peakC() - 25;
        assertTrue(fastC > 8 * slowC, slowC + " against " + fastC + " K");
    }

    @Test
    void run_chargerThatNeverStops_overchargesUntilTheInterrupterActs() {
        RunResult result = charge(on(used(), 2.5, 6, 0));

        assertEquals(RunEnd.INTERRUPTED, result.end());
        assertEquals(1, result.events(Kind.OVERCHARGED).size());
        assertEquals(1.3, result.last().cells().get(0).charge(), 1e-3);
    }

    @Test
    void run_chargerThatNeverStops_isCutOffByAGuard() {
        Part guarded = used().with("guard", Keys.of("trip_A", 10, "trip_s", 0.02, "mohm", 20));

        RunResult result = charge(on(guarded, 2.5, 6, 0));

        assertEquals(RunEnd.PROTECTION, result.end());
        RunEvent opened = result.events(Kind.GUARD_HIGH).get(0);
        assertEquals(4.28, opened.measured(), 0.005);
        assertTrue(result.last().cells().get(0).charge() < 1.05);
    }

    /** A rested LFP cell lies far below the 3.65 V where its charge ends, and can be charged up to there. */
    @Test
    void run_fullLfpCell_restsBelowTheVoltageOfItsCharge() {
        Part full = used().with("chemistry", "IFR").with("charge", 1);
        Bench bench = on(full, 1.25, 3.65, 0.125);

        assertEquals(3.38, bench.rest().cell("A").orElseThrow().restV(), 1e-9);
        RunResult result = charge(bench);
        assertEquals(RunEnd.CHARGED, result.end());
        assertEquals(1.005, result.last().cells().get(0).charge(), 1e-3);
        assertEquals(3.65, result.last().cells().get(0).terminalV(), 5e-3);
    }

    @Test
    void run_beyondTheChargingLimit_isTold() {
        RunResult result = charge(on(used(), 5, 4.2, 0.1));

        RunEvent told = result.events(Kind.CHARGED_TOO_FAST).get(0);
        assertEquals(5, told.measured(), 1e-6);
        assertEquals(4, told.limit());
    }
}
