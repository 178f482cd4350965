package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.sagwise.network.Element.LimitedSource;
import org.sagwise.network.Element.OneWay;

/** One-way elements wired at random: an answer always comes, and every element agrees with it. */
class OneWayProperties {
    private static final double CLOSE = 1e-6;

    private static List<Element> wired(Network plain, long seed, int count) {
        List<Element> elements = new ArrayList<>(plain.elements());
        Random random = new Random(seed);
        for (int i = 0; i < count; i++) {
            elements.add(new OneWay(
                    random.nextInt(plain.nodeCount()),
                    random.nextInt(plain.nodeCount()),
                    random.nextBoolean() ? 0 : random.nextDouble(),
                    random.nextInt(8) == 0 ? 0 : Math.exp(7 * random.nextDouble() - 7)));
        }
        return elements;
    }

    private static OperatingPoint solved(long seed, int nodes, int count) {
        Network plain = new RandomNetworks(seed, 1e-3, 1e3).cellsAndResistances(nodes);
        return NetworkSolver.solve(new Network(nodes, wired(plain, seed, count), plain.referencePreference()));
    }

    @Property(seed = "41")
    void solve_amongCells_settlesAndKirchhoffHolds(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 25) int nodes,
            @ForAll @IntRange(min = 1, max = 40) int count) {
        OperatingPoint point = solved(seed, nodes, count);
        assertEquals(List.of(), point.findings());
        assertTrue(point.residual().kclRelative() <= 1e-9, point.residual().toString());
        assertTrue(point.residual().powerRelative() <= 1e-9, point.residual().toString());
    }

    @Property(seed = "42")
    void solve_amongCells_currentForwardOrVoltsBelowTheDrop(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 25) int nodes,
            @ForAll @IntRange(min = 1, max = 40) int count) {
        OperatingPoint point = solved(seed, nodes, count);
        double largestA = 1 + point.residual().largestCurrentA();
        for (int i = 0; i < point.network().elements().size(); i++) {
            if (point.network().elements().get(i) instanceof OneWay d) {
                double volts = point.voltageV(d.from(), d.to());
                if (point.blocks(i)) {
                    assertEquals(0, point.currentA(i));
                    assertTrue(!(volts > d.dropV() + CLOSE), "blocks " + volts + " V of " + d);
                } else {
                    assertTrue(point.currentA(i) >= -1e-9 * largestA, "conducts " + point.currentA(i) + " A in " + d);
                    assertTrue(!(Math.abs(volts - d.dropV() - d.ohm() * point.currentA(i)) > CLOSE));
                }
            }
        }
    }

    /** What all give and take adds up to nothing: heat in each one-way element is its volts times its amps. */
    @Property(seed = "43")
    void solve_amongCells_energyIsKept(
            @ForAll long seed,
            @ForAll @IntRange(min = 2, max = 15) int nodes,
            @ForAll @IntRange(min = 1, max = 20) int count) {
        OperatingPoint point = solved(seed, nodes, count);
        double givenW = 0;
        double takenW = 0;
        for (int i = 0; i < point.network().elements().size(); i++) {
            double ampere = point.currentA(i);
            Element element = point.network().elements().get(i);
            if (element instanceof Element.Source s) {
                givenW += s.emfV() * ampere;
                takenW += s.seriesOhm() * ampere * ampere;
            } else if (element instanceof Element.Resistance r) {
                takenW += r.ohm() * ampere * ampere;
            } else if (element instanceof OneWay d) {
                takenW += (d.dropV() + d.ohm() * ampere) * ampere;
            }
        }
        assertEquals(givenW, takenW, 1e-9 * Math.max(1, takenW));
    }

    @Property(seed = "44")
    void solve_amongChargersAndBoards_anAnswerComesAndKirchhoffHolds(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 15) int nodes,
            @ForAll @IntRange(min = 1, max = 10) int count) {
        Network plain = new RandomNetworks(seed, 1e-3, 1e3).everything(nodes);
        List<Element> elements = wired(plain, seed, count);
        Random random = new Random(seed + 1);
        elements.add(new LimitedSource(
                random.nextInt(nodes), random.nextInt(nodes), 3 * random.nextDouble(), 6 * random.nextDouble()));
        elements.add(Circuits.board(
                random.nextInt(nodes), random.nextInt(nodes), random.nextInt(nodes), random.nextInt(nodes)));
        Residual residual = NetworkSolver.solve(new Network(nodes, elements, plain.referencePreference()))
                .residual();
        assertTrue(residual.kclRelative() <= 1e-9, residual.toString());
        assertTrue(residual.powerRelative() <= 1e-9, residual.toString());
    }
}
