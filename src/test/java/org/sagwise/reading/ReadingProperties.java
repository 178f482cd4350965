package org.sagwise.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.sagwise.fixture.Circuits;
import org.sagwise.fixture.RandomCircuits;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Press;

/** What must hold on any bench, however foolish. */
class ReadingProperties {

    /** Rounding allowed in a sum, as a share of its largest term. */
    private static final double ROUNDING = 1e-9;

    private static Bench bench(long seed, int most) {
        return Bench.of(RandomCircuits.of(seed, most), Circuits.NOTHING);
    }

    @Property(tries = 600)
    void ledger_anyBench_balances(@ForAll long seed, @ForAll @IntRange(min = 2, max = 30) int most) {
        Readings readings = bench(seed, most).now();
        Ledger ledger = Ledger.of(readings);
        Ledger.Row balance = ledger.rows().get(ledger.rows().size() - 1);
        assertEquals(Ledger.Entry.BALANCE, balance.entry());
        assertEquals(0, balance.powerW(), ROUNDING * Math.max(1, readings.pack().givenW()));
    }

    @Property(tries = 600)
    void readings_anyBench_bookEveryWattOnce(@ForAll long seed, @ForAll @IntRange(min = 2, max = 30) int most) {
        Readings readings = bench(seed, most).now();
        PackReading pack = readings.pack();
        double allPowers = readings.parts().stream()
                .filter(part -> part.kind() != PartKind.SUPPLY)
                .mapToDouble(PartReading::powerW)
                .sum();
        double links = readings.links().stream().mapToDouble(LinkReading::heatW).sum();
        assertEquals(allPowers + links, pack.deliveredW() + pack.pathHeatW(), ROUNDING * Math.max(1, pack.givenW()));
        assertTrue(pack.cellHeatW() >= 0 && pack.pathHeatW() >= 0);
    }

    @Property(tries = 600)
    void staircase_anyBench_addsUpToZeroOnEveryLoop(@ForAll long seed, @ForAll @IntRange(min = 2, max = 30) int most) {
        Bench bench = bench(seed, most);
        for (Press press : Press.values()) {
            Staircase stairs = Staircase.of(bench, press);
            assertEquals(0, rise(stairs.steps()), 1e-7);
            assertJoined(stairs.steps());
            for (Staircase.Lane lane : stairs.lanes()) {
                assertJoined(lane.steps());
                assertTrue(lane.afterStep() <= lane.untilStep(), "a lane runs with the loop");
                assertEquals(
                        rise(stairs.steps().subList(lane.afterStep(), lane.untilStep())), rise(lane.steps()), 1e-7);
            }
        }
    }

    private static double rise(List<Staircase.Step> steps) {
        return steps.stream().mapToDouble(Staircase.Step::riseV).sum();
    }

    private static void assertJoined(List<Staircase.Step> steps) {
        for (int i = 1; i < steps.size(); i++) {
            assertEquals(steps.get(i - 1).toV(), steps.get(i).fromV(), 1e-7);
        }
    }
}
