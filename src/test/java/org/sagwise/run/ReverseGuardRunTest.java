package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.fixture.Circuits.NOTHING;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Reverse guards while time passes. */
class ReverseGuardRunTest {

    private static Part full(String id) {
        return Part.of(id, PartKind.CELL, "charge", 1, "internal_mohm", 20, "capacity_mAh", 2500, "limit_A", 20);
    }

    /** A full and a half full cell side by side, each behind a diode. */
    private static Bench pair() {
        Part first = Part.of("G", PartKind.REVERSE_GUARD, "type", "diode", "rating_A", 10);
        Part second = Part.of("H", PartKind.REVERSE_GUARD, "type", "diode", "rating_A", 10);
        Scenario scenario = Scenario.of(
                "Pair",
                List.of(full("A"), full("B").with("charge", 0.5), first, second, Circuits.button(3), Circuits.coil(1)),
                List.of(
                        Circuits.ideal("A.+", "G.in"),
                        Circuits.ideal("B.+", "H.in"),
                        Circuits.ideal("G.out", "H.out"),
                        Circuits.ideal("A.-", "B.-"),
                        Circuits.ideal("G.out", "fire.1"),
                        Circuits.ideal("fire.2", "coil.1"),
                        Circuits.ideal("coil.2", "A.-")));
        return Bench.of(scenario, NOTHING);
    }

    @Test
    void run_unequalCellsBehindDiodes_theEmptierIsNeverCharged() {
        RunResult result = Runner.run(pair(), RunPlan.USUAL);

        EnergyBook book = result.last().energy();
        assertEquals(0, book.chargingJ(), 1e-9 * book.givenJ());
        assertEquals(0, book.missingJ() / book.givenJ(), 1e-6);
        // some 3.4 V at the coil, and 0.4 V and a little more in the diode: about a tenth
        assertTrue(book.pathHeatJ() > 0.09 * book.givenJ() && book.pathHeatJ() < 0.14 * book.givenJ());
    }

    @Test
    void run_cellTurnedRoundBehindAGuard_keepsItsCharge() {
        Bench bench = Bench.of(Circuits.turned(pair().scenario(), "B"), NOTHING);

        RunResult result = Runner.run(bench, RunPlan.USUAL);

        assertEquals(RunEnd.CUTOFF, result.end());
        assertEquals(0.5, result.last().cells().get(1).charge(), 1e-12);
    }
}
