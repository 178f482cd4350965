package org.sagwise.bench;

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
import org.sagwise.network.Element;
import org.sagwise.network.Network;
import org.sagwise.network.NetworkSolver;
import org.sagwise.network.OperatingPoint;

/**
 * How long one solution takes: cells side by side along two rails, every joint of the rails a
 * jumper and every cell behind two contacts, on one coil; and the same pack on a regulated board.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class NetworkBenchmark {
    /** Number of cells in the pack. */
    @Param({"4", "20", "100"})
    public int cells;

    private Network onCoil;
    private Network onBoard;

    @Setup
    public void build() {
        onCoil = pack(new Element.Resistance(0, 1, 0.3));
        onBoard = pack(new Element.Converter(0, 1, 2, 1, 5, 0.92, 3.2, 20, 0.5, 10));
    }

    private Network pack(Element load) {
        List<Element> elements = new ArrayList<>();
        elements.add(load);
        elements.add(new Element.Resistance(2, 1, 0.3));
        int node = 3;
        int plusRail = 0;
        int minusRail = 1;
        for (int i = 0; i < cells; i++) {
            elements.add(new Element.Source(node, node + 1, 4.2 - 0.001 * i, 0.03));
            elements.add(new Element.Resistance(node, node + 2, 0.004));
            elements.add(new Element.Resistance(node + 1, node + 3, 0.004));
            elements.add(new Element.Resistance(node + 2, plusRail, 0.001));
            elements.add(new Element.Resistance(node + 3, minusRail, 0.001));
            plusRail = node + 2;
            minusRail = node + 3;
            node += 4;
        }
        return new Network(node, elements, List.of(1));
    }

    @Benchmark
    public OperatingPoint packOnCoil() {
        return NetworkSolver.solve(onCoil);
    }

    @Benchmark
    public OperatingPoint packOnBoard() {
        return NetworkSolver.solve(onBoard);
    }
}
