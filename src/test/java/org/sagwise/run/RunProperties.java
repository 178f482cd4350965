package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.sagwise.fixture.Circuits;
import org.sagwise.fixture.RandomCircuits;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;

/** What must hold for any bench, however foolish. */
class RunProperties {

    private static final RunPlan QUARTER_HOUR = RunPlan.USUAL.until(900);

    private static RunResult run(long seed) {
        Bench bench = Bench.of(RandomCircuits.of(seed, 9), Circuits.NOTHING);
        return Runner.run(bench, QUARTER_HOUR);
    }

    @Property(tries = 150)
    void run_anyBench_balancesItsEnergy(@ForAll long seed) {
        RunResult result = run(seed);
        EnergyBook book = result.last().energy();

        if (!result.last().has(Kind.UNSOLVABLE)) {
            assertTrue(
                    Math.abs(book.missingJ()) <= 1e-6 * book.givenJ() + 1e-9, () -> book + " lacks " + book.missingJ());
        }
    }

    @Property(tries = 100)
    void run_anyBench_timeNeverRunsBackAndNothingIsNaN(@ForAll long seed) {
        RunResult result = run(seed);
        double beforeS = 0;
        for (RunState state : result.trace().states()) {
            assertTrue(state.timeS() >= beforeS);
            beforeS = state.timeS();
            for (double number : state.x) {
                assertFalse(Double.isNaN(number));
            }
        }
        assertTrue(result.last().timeS() <= 900);
        for (RunEvent event : result.events()) {
            assertTrue(event.atS() >= 0 && event.atS() <= 900);
        }
    }

    @Property(tries = 40)
    void run_sameBenchTwice_givesTheSameBits(@ForAll long seed) {
        RunResult first = run(seed);
        RunResult second = run(seed);

        assertEquals(first.events(), second.events());
        assertEquals(first.end(), second.end());
        assertEquals(first.last().cells(), second.last().cells());
        assertEquals(first.last().energy(), second.last().energy());
    }

    @Property(tries = 60)
    void run_anyBench_endsInABoundedNumberOfSteps(@ForAll long seed) {
        // 30 presses and rests with some events among them.
        assertTrue(run(seed).trace().states().size() < 8000);
    }

    @Property(tries = 60)
    void run_anyBench_everyCellsChargeIsItsCurrentSummedUp(@ForAll long seed) {
        Bench bench = Bench.of(RandomCircuits.of(seed, 9), Circuits.NOTHING);
        // Fine steps, since the trapezium rule below is three times as far off as a step.
        RunSettings fine = RunSettings.USUAL.withFineness(0.1);
        RunResult result = Runner.run(bench, RunPlan.USUAL.until(20), fine, RunProgress.NONE);
        List<RunState> states = result.trace().states();
        for (int k = 0; k < bench.cells().size(); k++) {
            double amperes = 0;
            double size = 0;
            for (int i = 1; i < states.size(); i++) {
                double seconds = states.get(i).timeS() - states.get(i - 1).timeS();
                double before = states.get(i - 1).cells().get(k).currentA();
                double after = states.get(i).cells().get(k).currentA();
                amperes += 0.5 * (before + after) * seconds;
                size += 0.5 * (Math.abs(before) + Math.abs(after)) * seconds;
            }
            CellMoment last = result.last().cells().get(k);
            double capacityAs = bench.cells().get(last.id()).capacityAh() * 3600;
            double start = bench.cells().get(last.id()).start().charge();
            double driven = result.last().x[result.last().model.layout.cell(k, StateLayout.DEPTH)];
            if (result.last().has(Kind.INTERNAL_SHORT, last.id())) {
                continue; // what leaks through the copper inside is no current of the cell
            }
            assertEquals(start - last.charge() + driven, amperes / capacityAs, 5e-3 * size / capacityAs + 1e-6);
        }
    }

    @Property(tries = 150)
    void run_guardsBoardsChargersAndWoundCoils_balancesWithoutNaN(@ForAll long seed) {
        RunResult result = Runner.run(DeviceBenches.of(seed), QUARTER_HOUR);
        EnergyBook book = result.last().energy();

        assertTrue(
                result.last().has(Kind.UNSOLVABLE) || Math.abs(book.missingJ()) <= 1e-6 * book.givenJ() + 1e-9,
                () -> book + " lacks " + book.missingJ());
        for (RunState state : result.trace().states()) {
            for (double number : state.x) {
                assertFalse(Double.isNaN(number));
            }
        }
    }
}
