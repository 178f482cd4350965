package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.part.Reversal;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;

/** Cells that have nothing left and are driven on. */
class ReversalTest {

    private static Part cell(String key, double value) {
        return Part.of(
                "A",
                PartKind.CELL,
                key,
                value,
                "internal_mohm",
                25,
                "capacity_mAh",
                2500,
                "limit_A",
                20,
                "charge_limit_A",
                4);
    }

    /**
     * A full 18650 driven with 1 C to a depth of discharge of 200 %: minimum −1.3 to −1.5 V, then
     * back toward 0 V, surface up to 79 °C (Elucidating Copper Dissolution…, J. Electrochem. Soc.
     * 165(9), A1639, 2018, abstract).
     */
    @Test
    void run_oneCToTwiceItsCapacity_goesAsPublished() {
        RunResult result = Runner.run(
                ElectronicLoad.on(cell("charge", 1), 2.5, 25),
                RunPlan.held().until(7200),
                RunSettings.USUAL,
                RunProgress.NONE);
        CellMoment last = result.last().cells().get(0);

        assertTrue(last.leastV() < -1.3 && last.leastV() > -1.5, "least " + last.leastV());
        assertTrue(last.terminalV() > -0.3 && last.terminalV() < 0, "last " + last.terminalV());
        assertEquals(79, last.peakC(), 5);
        assertEquals(1, result.events(Kind.INTERNAL_SHORT).size());
        assertEquals(0, last.restV(), 1e-9);
    }

    /** The energy a cell gave in all its life is at most what its charge held. */
    @Test
    void run_restVoltageBelowZeroOnACoil_givesNothing() {
        Bench bench = Bench.of(Circuits.single(cell("rest_V", -1), 0.5), Circuits.NOTHING);

        assertEquals(
                -1, bench.rest().cell("A").orElseThrow().restV(), 1e-12, "at the first instant the file has its way");
        RunResult result = Runner.run(bench, RunPlan.held().until(600), RunSettings.USUAL, RunProgress.NONE);

        assertTrue(
                result.last().energy().deliveredJ() < 1,
                () -> "" + result.last().energy());
        assertEquals(0, result.last().cells().get(0).restV(), 0.1);
    }

    /** Once copper bridges it, what is charged into the cell leaks away again. */
    @Test
    void advance_bridgedCellAtRest_losesWhatItWasCharged() {
        Bench bench = ElectronicLoad.on(cell("charge", 0), 1.5, 25);
        Stepper stepper = new Stepper(bench, RunSettings.USUAL);
        RunState state = stepper.advance(stepper.start(), Press.HELD, 2600).state();

        assertTrue(state.has(Kind.INTERNAL_SHORT));
        state.x[StateLayout.CHARGE] = 0.2;
        RunState later = stepper.advance(state, Press.HELD, 60).state();

        double byLoad = 1.5 * 60 / (2.5 * 3600);
        assertTrue(later.cells().get(0).charge() < 0.2 - 1.5 * byLoad);
    }

    /** Random rows, loads and charges. */
    @Property(tries = 120, seed = "20261129")
    void run_anyRow_noCellIsABatteryOfNegativeVoltage(@ForAll long seed) {
        Random random = new Random(seed);
        List<Part> cells = new ArrayList<>();
        int count = 2 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            double charge = random.nextInt(3) == 0 ? 0.1 * random.nextDouble() : random.nextDouble();
            cells.add(Part.of(
                    "" + (char) ('A' + i),
                    PartKind.CELL,
                    "charge",
                    charge,
                    "internal_mohm",
                    10 + random.nextInt(60),
                    "capacity_mAh",
                    800 + random.nextInt(3000),
                    "limit_A",
                    20));
        }
        double ohm = Math.pow(10, -0.7 + 2 * random.nextDouble());
        Bench bench = Bench.of(Circuits.series(ohm, cells.toArray(Part[]::new)), Circuits.NOTHING);
        RunResult result = Runner.run(bench, RunPlan.held().until(7200), RunSettings.USUAL, RunProgress.NONE);

        EnergyBook book = result.last().energy();
        assertEquals(0, book.missingJ(), 1e-6 * book.givenJ() + 1e-9);
        for (int k = 0; k < count; k++) {
            double belowSinceS = Double.NaN;
            double givenJ = 0;
            RunState before = result.trace().states().get(0);
            for (RunState state : result.trace().states()) {
                CellMoment moment = state.cells().get(k);
                boolean below = moment.terminalV() < -1.6;
                belowSinceS = below ? Double.isNaN(belowSinceS) ? state.timeS() : belowSinceS : Double.NaN;
                assertFalse(state.timeS() - belowSinceS > 1, () -> "below -1.6 V: " + moment);
                CellMoment earlier = before.cells().get(k);
                if (earlier.charge() <= -0.05) {
                    double meanW =
                            0.5 * (moment.terminalV() * moment.currentA() + earlier.terminalV() * earlier.currentA());
                    givenJ += meanW * (state.timeS() - before.timeS());
                }
                before = state;
                double soFarJ = givenJ;
                assertTrue(soFarJ <= 1e-3, () -> "gave " + soFarJ + " J when empty: " + moment);
            }
        }
    }

    @Test
    void bridgeOhm_deeper_falls() {
        assertTrue(Double.isInfinite(Reversal.bridgeOhm(Reversal.BRIDGE_DEPTH, 2.5)));
        assertTrue(Reversal.bridgeOhm(1, 2.5) < 0.1 * Reversal.bridgeOhm(0.25, 2.5));
        assertEquals(1.4, Reversal.plateauV(0.5), 1e-12);
        assertEquals(0, Reversal.plateauV(0), 1e-12);
    }
}
