package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.network.Changes.assertCurrents;
import static org.sagwise.network.Changes.currents;
import static org.sagwise.network.Changes.mapped;
import static org.sagwise.network.Changes.renamed;
import static org.sagwise.network.Changes.scaled;
import static org.sagwise.network.Changes.shuffled;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.sagwise.network.Element.CurrentSource;
import org.sagwise.network.Element.Resistance;
import org.sagwise.network.Element.Source;

/** What holds for every linear network. */
class NetworkPropertyTest {
    private static final double LAW = 1e-9;

    /** Resistances from the smallest joint to the largest insulation resistance. */
    private static Network wide(long seed, int nodes) {
        return new RandomNetworks(seed, 1e-7, 1e9).everything(nodes);
    }

    /** Resistances of a bench: contacts to coils and leaks. */
    private static Network bench(long seed, int nodes) {
        return new RandomNetworks(seed, 1e-3, 1e3).everything(nodes);
    }

    @Property
    void solve_anyNetwork_currentsAtEveryNodeSumToZero(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int nodes) {
        Network network = wide(seed, nodes);
        OperatingPoint point = NetworkSolver.solve(network);
        assertEquals(List.of(), point.findings());
        double[] netA = new double[nodes];
        double largestA = 0;
        for (int i = 0; i < network.elements().size(); i++) {
            List<Integer> ends = network.elements().get(i).nodes();
            double intoFirstA = point.currentA(i) * intoFirst(network.elements().get(i));
            if (!ends.get(0).equals(ends.get(1))) {
                netA[ends.get(0)] += intoFirstA;
                netA[ends.get(1)] -= intoFirstA;
                largestA = Math.max(largestA, Math.abs(intoFirstA));
            }
        }
        for (double sumA : netA) {
            assertEquals(0, sumA, LAW * largestA);
        }
        assertTrue(point.residual().kclRelative() <= LAW);
    }

    private static int intoFirst(Element element) {
        return element instanceof Resistance ? -1 : 1;
    }

    @Property
    void solve_anyNetwork_powerSuppliedIsPowerBooked(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int nodes) {
        OperatingPoint point = NetworkSolver.solve(wide(seed, nodes));
        double deliveredW = 0;
        double suppliedW = 0;
        double lostDigitsW = 0;
        for (int i = 0; i < point.network().elements().size(); i++) {
            Element element = point.network().elements().get(i);
            double sourceW = sourceW(element, i, point);
            deliveredW += sourceW - heatW(element, point.currentA(i));
            suppliedW += Math.max(0, sourceW);
            if (element instanceof CurrentSource s && point.isKnown(s.plus())) {
                lostDigitsW += Math.ulp(point.potentialV(s.plus())) * Math.abs(s.currentA());
            }
        }
        assertEquals(0, deliveredW, LAW * suppliedW + 2 * lostDigitsW);
        assertTrue(point.residual().powerRelative() <= LAW);
    }

    private static double sourceW(Element element, int index, OperatingPoint point) {
        double currentA = point.currentA(index);
        if (element instanceof CurrentSource s) {
            return point.voltageV(s.plus(), s.minus()) * currentA;
        }
        return element instanceof Source s ? s.emfV() * currentA : 0;
    }

    private static double heatW(Element element, double currentA) {
        double ohm = element instanceof Resistance r ? r.ohm() : 0;
        return (element instanceof Source s ? s.seriesOhm() : ohm) * currentA * currentA;
    }

    @Property
    void solve_anyNetwork_everyElementObeysItsOwnLaw(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int nodes) {
        Network network = wide(seed, nodes);
        OperatingPoint point = NetworkSolver.solve(network);
        double highestV = 1;
        for (int node = 0; node < nodes; node++) {
            highestV = Math.max(highestV, point.isKnown(node) ? Math.abs(point.potentialV(node)) : 0);
        }
        for (int i = 0; i < network.elements().size(); i++) {
            double currentA = point.currentA(i);
            if (network.elements().get(i) instanceof Resistance r && point.isKnown(r.a())) {
                assertEquals(r.ohm() * currentA, point.voltageV(r.a(), r.b()), 1e-11 * highestV);
            } else if (network.elements().get(i) instanceof Source s) {
                double expectedV = s.emfV() - s.seriesOhm() * currentA;
                assertEquals(expectedV, point.voltageV(s.plus(), s.minus()), 1e-11 * highestV);
            }
        }
        assertTrue(point.residual().kvlWorstV() <= 1e-11 * highestV);
    }

    @Property
    void solve_sourcesOneAtATime_currentsAddUp(@ForAll long seed, @ForAll @IntRange(min = 1, max = 25) int nodes) {
        Network network = bench(seed, nodes);
        int count = network.elements().size();
        double[] sumA = new double[count];
        for (int i = 0; i < count; i++) {
            if (!(network.elements().get(i) instanceof Resistance)) {
                int only = i;
                OperatingPoint part = NetworkSolver.solve(mapped(network, (k, e) -> k == only ? e : scaled(e, 0, 1)));
                for (int k = 0; k < count; k++) {
                    sumA[k] += part.currentA(k);
                }
            }
        }
        assertCurrents(sumA, NetworkSolver.solve(network), 1e-10);
    }

    @Property
    void solve_allSourcesTimesFactor_currentsTimesFactor(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 60) int nodes,
            @ForAll @DoubleRange(min = -1000, max = 1000) double factor) {
        Network network = bench(seed, nodes);
        OperatingPoint scaled = NetworkSolver.solve(mapped(network, (k, e) -> scaled(e, factor, 1)));
        double[] expectedA = currents(NetworkSolver.solve(network));
        for (int i = 0; i < expectedA.length; i++) {
            expectedA[i] *= factor;
        }
        assertCurrents(expectedA, scaled, 1e-10);
    }

    @Property
    void solve_allResistancesTimesFactor_currentsDividedByFactor(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 60) int nodes,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double factor) {
        Network network = new RandomNetworks(seed, 1e-3, 1e3).cellsAndResistances(nodes);
        OperatingPoint scaled = NetworkSolver.solve(mapped(network, (k, e) -> scaled(e, 1, factor)));
        double[] expectedA = currents(NetworkSolver.solve(network));
        for (int i = 0; i < expectedA.length; i++) {
            expectedA[i] /= factor;
        }
        assertCurrents(expectedA, scaled, 1e-10);
    }

    @Property
    void solve_allSourcesTurnedRound_everythingChangesSign(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int nodes) {
        Network network = wide(seed, nodes);
        OperatingPoint point = NetworkSolver.solve(network);
        OperatingPoint mirrored = NetworkSolver.solve(mapped(network, (k, e) -> scaled(e, -1, 1)));
        for (int i = 0; i < network.elements().size(); i++) {
            assertEquals(-point.currentA(i) + 0.0, mirrored.currentA(i) + 0.0);
        }
        for (int node = 0; node < nodes; node++) {
            assertEquals(-point.potentialV(node) + 0.0, mirrored.potentialV(node) + 0.0);
        }
    }

    @Property
    void solve_otherNamesAndOrder_sameAnswers(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int nodes) {
        Network network = bench(seed, nodes);
        List<Integer> name = shuffled(nodes, seed + 1);
        List<Integer> place = shuffled(network.elements().size(), seed + 2);
        List<Element> elements = new ArrayList<>();
        place.forEach(i -> elements.add(renamed(network.elements().get(i), name)));
        List<Integer> reference =
                network.referencePreference().stream().map(name::get).toList();
        OperatingPoint other = NetworkSolver.solve(new Network(nodes, elements, reference));
        OperatingPoint point = NetworkSolver.solve(network);
        double[] expectedA = new double[elements.size()];
        for (int k = 0; k < expectedA.length; k++) {
            expectedA[k] = point.currentA(place.get(k));
        }
        assertCurrents(expectedA, other, 1e-10);
        int root = network.referencePreference().get(0);
        for (int node = 0; node < nodes; node++) {
            double here = point.voltageV(node, root);
            assertEquals(here, other.voltageV(name.get(node), name.get(root)), 1e-8);
        }
    }

    @Property
    void solve_equalCellsSideBySideWithoutLoad_noCurrent(
            @ForAll @IntRange(min = 2, max = 60) int cells,
            @ForAll @DoubleRange(min = 0.1, max = 5) double emfV,
            @ForAll long seed) {
        Random random = new Random(seed);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < cells; i++) {
            elements.add(new Source(2 + i, 0, emfV, 0.02 + random.nextDouble()));
            elements.add(new Resistance(2 + i, 1, 1e-7 + random.nextDouble()));
        }
        OperatingPoint point = NetworkSolver.solve(new Network(cells + 2, elements, List.of(0)));
        for (int i = 0; i < elements.size(); i++) {
            assertEquals(0.0, Math.abs(point.currentA(i)));
        }
        assertEquals(emfV, point.potentialV(1));
    }

    @Property
    void solve_jointsAsNanoOhms_nearlyTheSame(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int nodes) {
        Network network = bench(seed, nodes);
        OperatingPoint nearly = NetworkSolver.solve(mapped(
                network, (k, e) -> e instanceof Resistance r && r.ohm() == 0 ? new Resistance(r.a(), r.b(), 1e-9) : e));
        assertCurrents(currents(NetworkSolver.solve(network)), nearly, 1e-4);
    }

    @Property
    void solve_sameNetworkTwice_sameBits(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int nodes) {
        double[] once = currents(NetworkSolver.solve(wide(seed, nodes)));
        assertTrue(Arrays.equals(once, currents(NetworkSolver.solve(wide(seed, nodes)))));
    }
}
