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
import org.sagwise.file.CatalogueLoader;
import org.sagwise.fixture.Circuits;
import org.sagwise.fixture.Packs;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.Runner;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * How long a whole run-down takes: presses of 3 s every 30 s until the first cell falls to its
 * cut-off, with heat.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class RunBenchmark {

    /** What is run down. */
    @Param({"two-side-by-side", "two-with-wound-coil", "two-in-a-row", "twenty", "board"})
    public String bench;

    private Bench laidOut;

    @Setup
    public void build() {
        laidOut = Bench.of(scenario(), CatalogueLoader.builtIn());
    }

    private Scenario scenario() {
        Part a = Circuits.cell("A", 4.2, 25);
        Part b = Circuits.cell("B", 4.2, 28);
        return switch (bench) {
            case "two-side-by-side" -> Packs.of(2, 1);
            case "two-with-wound-coil" -> wound(Packs.of(2, 1));
            case "two-in-a-row" -> Circuits.series(4, a, b);
            case "twenty" -> Packs.of(10, 2);
            case "board" -> board(a);
            default -> throw new IllegalArgumentException(bench);
        };
    }

    private static Scenario wound(Scenario scenario) {
        Keys wire = Keys.of("alloy", "steel-316l", "awg", 26, "wraps", 8, "inner_mm", 3, "legs_mm", 20);
        return scenario.withParts(scenario.parts().stream()
                .map(part -> part.kind() == PartKind.COIL ? Part.of("coil", PartKind.COIL, "wire", wire) : part)
                .toList());
    }

    private static Scenario board(Part cell) {
        return Scenario.of(
                "Board",
                List.of(cell, Circuits.button(3), Part.of("board", PartKind.BOARD, "power_W", 15), Circuits.coil(0.8)),
                List.of(
                        Circuits.ideal("A.+", "fire.1"),
                        Circuits.ideal("fire.2", "board.in+"),
                        Circuits.ideal("A.-", "board.in-"),
                        Circuits.ideal("board.out+", "coil.1"),
                        Circuits.ideal("board.out-", "coil.2")));
    }

    @Benchmark
    public RunResult wholeRunDown() {
        return Runner.run(laidOut, RunPlan.USUAL);
    }
}
