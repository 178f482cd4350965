package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.network.Element.Converter;
import org.sagwise.network.Element.LimitedSource;

/** Chargers and regulated boards wired at random: an answer always comes, and it keeps its word. */
class DevicePropertyTest {
    private static final double CLOSE = 1e-6;
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private static Network wiredAtRandom(long seed, int nodes, int devices) {
        Network plain = new RandomNetworks(seed, 1e-3, 1e3).everything(nodes);
        List<Element> elements = new ArrayList<>(plain.elements());
        Random random = new Random(seed);
        for (int i = 0; i < devices; i++) {
            elements.add(random.nextBoolean() ? charger(random, nodes) : board(random, nodes));
        }
        return new Network(nodes, elements, plain.referencePreference());
    }

    private static LimitedSource charger(Random random, int nodes) {
        return new LimitedSource(
                random.nextInt(nodes), random.nextInt(nodes), 3 * random.nextDouble(), 6 * random.nextDouble());
    }

    private static Converter board(Random random, int nodes) {
        return new Converter(
                random.nextInt(nodes),
                random.nextInt(nodes),
                random.nextInt(nodes),
                random.nextInt(nodes),
                Math.exp(10 * random.nextDouble() - 6),
                0.5 + 0.5 * random.nextDouble(),
                random.nextDouble(),
                20 * random.nextDouble(),
                random.nextDouble(),
                1 + 9 * random.nextDouble());
    }

    private static OperatingPoint solved(long seed, int nodes, int devices) {
        Network network = wiredAtRandom(seed, nodes, devices);
        return assertTimeoutPreemptively(PATIENCE, () -> NetworkSolver.solve(network));
    }

    @Property
    void solve_devicesAtRandom_kirchhoffHolds(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 25) int nodes,
            @ForAll @IntRange(min = 1, max = 5) int devices) {
        Residual residual = solved(seed, nodes, devices).residual();
        assertTrue(residual.kclRelative() <= 1e-9, residual.toString());
        assertTrue(residual.powerRelative() <= 1e-9, residual.toString());
    }

    /**
     * Three chargers on one dead end never agree; a fourth lies across a cell above its own limit.
     * Then chargers that a board leaves without a partner, and wirings in which the last change
     * moved another one.
     */
    @ParameterizedTest
    @CsvSource({
        "9223372036854775807, 6, 5",
        "7948153121661488138, 8, 5",
        "6979297255467499591, 4, 5",
        "4371179042371789916, 7, 5"
    })
    void solve_chargersThatOnceBrokeTheirWord_withinCurrentAndVoltage(long seed, int nodes, int devices) {
        solve_chargersAtRandom_withinCurrentAndVoltage(seed, nodes, devices);
    }

    @Property
    void solve_chargersAtRandom_withinCurrentAndVoltage(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 25) int nodes,
            @ForAll @IntRange(min = 1, max = 5) int devices) {
        OperatingPoint point = solved(seed, nodes, devices);
        for (int i = 0; i < point.network().elements().size(); i++) {
            if (point.network().elements().get(i) instanceof LimitedSource c && certain(point, i)) {
                double currentA = point.currentA(i);
                double volt = point.voltageV(c.plus(), c.minus());
                switch (point.chargerState(i).orElseThrow()) {
                    case CONSTANT_CURRENT -> {
                        assertEquals(c.maxA(), currentA);
                        assertTrue(volt <= c.limitV() + CLOSE);
                    }
                    case CONSTANT_VOLTAGE -> {
                        assertEquals(c.limitV(), volt, CLOSE);
                        assertTrue(currentA >= -CLOSE && currentA <= c.maxA() + CLOSE);
                    }
                    case OFF -> {
                        assertEquals(0, currentA);
                        assertTrue(volt >= c.limitV() - CLOSE);
                    }
                }
            }
        }
    }

    /**
     * A few milliamperes are the difference of a thousand amperes that two boards drive across
     * milliohms: rounding moves the power by some 1e-8, which once passed for a voltage limit.
     */
    @ParameterizedTest
    @CsvSource({
        "2850, 23, 3",
        "2186, 16, 3",
        "-1907439938577086820, 22, 2",
        "4143, 18, 4",
        "4416, 14, 4",
        "5234363181820045895, 25, 4",
        "3788541192196703148, 8, 5"
    })
    void solve_boardsThatOnceBrokeTheirWord_powerPaidForAndLimitsKept(long seed, int nodes, int devices) {
        solve_boardsAtRandom_powerPaidForAndLimitsKept(seed, nodes, devices);
    }

    @Property
    void solve_boardsAtRandom_powerPaidForAndLimitsKept(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 25) int nodes,
            @ForAll @IntRange(min = 1, max = 5) int devices) {
        OperatingPoint point = solved(seed, nodes, devices);
        for (int i = 0; i < point.network().elements().size(); i++) {
            if (point.network().elements().get(i) instanceof Converter c && certain(point, i)) {
                if (Double.isNaN(point.outputCurrentA(i))) {
                    assertTrue(isOfUnsolvedIsland(point, c.outPlus()), "unknown without a reason");
                    continue;
                }
                ConverterState state = point.converterState(i).orElseThrow();
                if (state.delivers()) {
                    assertKeepsItsWord(c, state, point, i);
                } else {
                    assertEquals(0, point.currentA(i), CLOSE);
                    assertEquals(0, point.outputCurrentA(i), CLOSE);
                }
            }
        }
    }

    private static boolean certain(OperatingPoint point, int element) {
        return !Double.isNaN(point.currentA(element))
                && point.findings().stream().noneMatch(f -> f.elements().contains(element));
    }

    private static boolean isOfUnsolvedIsland(OperatingPoint point, int node) {
        return point.findings().stream()
                .flatMap(finding -> finding.elements().stream())
                .flatMap(element -> point.network().elements().get(element).nodes().stream())
                .anyMatch(other -> point.island(other) == point.island(node));
    }

    private static void assertKeepsItsWord(Converter c, ConverterState state, OperatingPoint point, int i) {
        double inputV = point.voltageV(c.inPlus(), c.inMinus());
        double outputV = point.voltageV(c.outPlus(), c.outMinus());
        double outputW = outputV * point.outputCurrentA(i);
        assertEquals(outputW, c.efficiency() * inputV * point.currentA(i), CLOSE * outputW);
        assertTrue(inputV >= c.cutoffV() * (1 - CLOSE));
        assertTrue(point.currentA(i) <= c.maxInputA() * (1 + CLOSE));
        switch (state) {
            case RUNNING -> assertEquals(c.powerW(), outputW, CLOSE * c.powerW());
            case OUTPUT_AT_MAX -> {
                assertEquals(c.outMaxV(), outputV, CLOSE);
                assertTrue(outputW < c.powerW());
            }
            default -> {
                assertEquals(c.outMinV(), outputV, CLOSE);
                assertTrue(outputW > c.powerW());
            }
        }
    }
}
