package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Networks so large that they are solved node by node. */
class LargeNetworkTest {

    /** Rounding allowed, as a share of the largest current or of the power given. */
    private static final double ROUNDING = 1e-9;

    /** Cells in strings on a ladder of rails, on one load; every value from a seed. */
    private static Network ladder(int rungs, Random random) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < rungs; i++) {
            elements.add(
                    new Element.Source(2 * i, 2 * i + 1, 3 + random.nextDouble(), 0.01 + 0.09 * random.nextDouble()));
            if (i > 0) {
                elements.add(new Element.Resistance(2 * i - 2, 2 * i, ohm(random, -4, -2)));
                elements.add(new Element.Resistance(2 * i - 1, 2 * i + 1, ohm(random, -4, -2)));
            }
        }
        elements.add(new Element.Resistance(0, 1, 0.5));
        return new Network(2 * rungs, elements, List.of(1));
    }

    /** Anything joined to anything, from a ten-millionth of an ohm to ten megohms. */
    private static Network tangle(int nodes, int joints, Random random) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < joints; i++) {
            int a = random.nextInt(nodes);
            int b = (a + 1 + random.nextInt(nodes - 1)) % nodes;
            elements.add(
                    random.nextInt(4) == 0
                            ? new Element.Source(a, b, 5 * random.nextDouble(), ohm(random, -3, 0))
                            : new Element.Resistance(a, b, ohm(random, -7, 7)));
        }
        return new Network(nodes, elements, List.of());
    }

    private static double ohm(Random random, double least, double most) {
        return Math.pow(10, least + (most - least) * random.nextDouble());
    }

    private static void assertBalances(Network network) {
        OperatingPoint point = NetworkSolver.solve(network);
        Residual residual = point.residual();
        double givenW = 0;
        for (int i = 0; i < network.elements().size(); i++) {
            if (network.elements().get(i) instanceof Element.Source source) {
                givenW += Math.max(0, source.emfV() * point.currentA(i));
            }
        }
        assertTrue(residual.largestCurrentA() > 0, "something flows");
        assertEquals(0, residual.kclWorstA(), ROUNDING * residual.largestCurrentA());
        assertEquals(0, residual.powerErrorW(), ROUNDING * givenW);
        assertEquals(0, residual.kvlWorstV(), ROUNDING);
    }

    @Property(tries = 15)
    void solve_longLadder_balances(@ForAll long seed) {
        Random random = new Random(seed);
        assertBalances(ladder(150 + random.nextInt(150), random));
    }

    @Property(tries = 15)
    void solve_largeTangle_balances(@ForAll long seed) {
        assertBalances(tangle(250, 500, new Random(seed)));
    }

    /** So many joints that, long before the end, every node has many neighbours. */
    @Property(tries = 15)
    void solve_thickTangle_balances(@ForAll long seed) {
        assertBalances(tangle(250, 2000, new Random(seed)));
    }

    /** Equal cells on rails without resistance share equally: a sum done by hand. */
    @Test
    void solve_threeHundredEqualCellsOnIdealRails_shareEqually() {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            elements.add(new Element.Source(0, 1, 4.2, 0.03));
        }
        elements.add(new Element.Resistance(0, 1, 0.1));
        OperatingPoint point = NetworkSolver.solve(new Network(2, elements, List.of(1)));
        assertEquals(4.2 / (0.1 + 0.03 / 300) / 300, point.currentA(7), 1e-12);
    }

    /** A chain of loops worked from its far end by the rules for series and parallel. */
    @Test
    void solve_ladderOfResistances_agreesWithSeriesAndParallel() {
        int rungs = 400;
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < rungs; i++) {
            elements.add(new Element.Resistance(i, i + 1, 2));
            elements.add(new Element.Resistance(i + 1, rungs + 1, 3));
        }
        elements.add(new Element.Source(0, rungs + 1, 10, 1));
        double seenOhm = 2 + 3;
        for (int i = 1; i < rungs; i++) {
            seenOhm = 2 + 3 * seenOhm / (3 + seenOhm);
        }
        OperatingPoint point = NetworkSolver.solve(new Network(rungs + 2, elements, List.of(rungs + 1)));
        assertEquals(10 / (1 + seenOhm), point.currentA(2 * rungs), 1e-12);
    }
}
