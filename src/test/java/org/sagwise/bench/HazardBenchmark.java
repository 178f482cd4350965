package org.sagwise.bench;

import static org.sagwise.fixture.Circuits.button;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.jumper;
import static org.sagwise.fixture.Circuits.touch;
import static org.sagwise.fixture.Circuits.turned;

import java.util.ArrayList;
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
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * How long all hazard rules take on a bench whose readings are known: rows of cells with a contact
 * at every joint, side by side on jumpers; sound, and with one cell turned round.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class HazardBenchmark {

    /** Cells in a row and rows side by side. */
    @Param({"1", "2", "10", "20"})
    public int side;

    private Bench sound;
    private Bench reversed;

    @Setup
    public void build() {
        Scenario scenario = square(side);
        sound = bench(scenario);
        reversed = bench(turned(scenario, "c0-0"));
    }

    private static Bench bench(Scenario scenario) {
        Bench bench = Bench.of(scenario, Circuits.NOTHING);
        bench.rest();
        bench.fired();
        return bench;
    }

    private static Scenario square(int side) {
        List<Part> parts = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        String last = "-" + (side - 1);
        for (int row = 0; row < side; row++) {
            String name = "c" + row + "-";
            for (int i = 0; i < side; i++) {
                parts.add(cell(name + i, 4.0, 20));
                if (i > 0) {
                    links.add(touch(name + (i - 1) + ".+", name + i + ".-", 3));
                }
            }
            if (row > 0) {
                links.add(jumper("c0-0.-", name + "0.-", 14, 40));
                links.add(jumper("c0" + last + ".+", "c" + row + last + ".+", 14, 40));
            }
        }
        parts.add(button(3));
        parts.add(coil(1.0));
        links.add(jumper("c0" + last + ".+", "fire.1", 10, 50));
        links.add(ideal("fire.2", "coil.1"));
        links.add(ideal("coil.2", "c0-0.-"));
        return Scenario.of("Square", parts, links);
    }

    @Benchmark
    public List<Caution> soundPack() {
        return Hazards.check(sound);
    }

    @Benchmark
    public List<Caution> oneReversed() {
        return Hazards.check(reversed);
    }
}
