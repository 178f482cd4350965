package org.sagwise.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.sagwise.fixture.Circuits;
import org.sagwise.fixture.Packs;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Scenario;

/** What an edit costs: a bench is looked up, compiled, solved, read and held against the rules. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PipelineBenchmark {

    /** Strings side by side × cells in each. */
    @Param({"1x1", "2x2", "5x4", "10x10", "20x20"})
    String pack;

    private Scenario scenario;

    @Setup
    public void layOut() {
        String[] sizes = pack.split("x");
        scenario = Packs.of(Integer.parseInt(sizes[0]), Integer.parseInt(sizes[1]));
    }

    /** Readings with the button held. */
    @Benchmark
    public Readings compileSolveRead() {
        return Bench.of(scenario, Circuits.NOTHING).fired();
    }

    /** Readings with the button held and let go, and all cautions. */
    @Benchmark
    public List<Caution> compileSolveReadAndCheck() {
        return Hazards.check(Bench.of(scenario, Circuits.NOTHING));
    }
}
