package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PreparedNetworkTest {

    /**
     * Branch current example of T. R. Kuphaldt, Lessons in Electric Circuits, Vol. I: 28 V behind 4
     * Ω and 7 V behind 1 Ω on 2 Ω give 5, 1 and 4 A.
     */
    @Test
    void solve_twoSourcesOnOneLoad_givesPrintedCurrents() {
        PreparedNetwork prepared = PreparedNetwork.of(twoSources(1, 1, 1)).orElseThrow();
        double[] currentA = new double[3];

        assertTrue(prepared.solve(new double[] {28, 7, 0}, new double[] {4, 1, 2}, currentA));

        assertEquals(5, currentA[0], 1e-12);
        assertEquals(-1, currentA[1], 1e-12);
        assertEquals(4, currentA[2], 1e-12);
    }

    @Test
    void solve_otherValuesThanPreparedFor_agreesWithSolver() {
        PreparedNetwork prepared = PreparedNetwork.of(twoSources(1, 1, 1)).orElseThrow();
        double[] currentA = new double[3];
        prepared.solve(new double[] {4.2, 4.1, 0}, new double[] {1e-3, 40, 1e7}, currentA);

        OperatingPoint point = NetworkSolver.solve(new Network(
                2,
                List.of(
                        new Element.Source(1, 0, 4.2, 1e-3),
                        new Element.Source(1, 0, 4.1, 40),
                        new Element.Resistance(1, 0, 1e7)),
                List.of(0)));

        for (int e = 0; e < 3; e++) {
            assertEquals(point.currentA(e), currentA[e], 1e-12 * Math.abs(point.currentA(e)));
        }
    }

    @Test
    void solve_idealSourcesSideBySide_saysThatThereIsNoSingleAnswer() {
        PreparedNetwork prepared = PreparedNetwork.of(twoSources(0, 0, 1)).orElseThrow();

        assertFalse(prepared.solve(new double[] {4, 4, 0}, new double[] {0, 0, 1}, new double[3]));
    }

    @Test
    void of_charger_isRefused() {
        Network network = new Network(2, List.of(new Element.LimitedSource(1, 0, 1, 4.2)), List.of());

        assertTrue(PreparedNetwork.of(network).isEmpty());
    }

    @Property
    void solve_anyNetwork_agreesWithSolver(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int nodes) {
        assertAgreesWithSolver(withoutCurrentSources(new RandomNetworks(seed, 1e-7, 1e9).everything(nodes)));
    }

    /** 4.2 V against 4.2 V across 54 millionths of an ohm, with fractions of a microampere. */
    @Test
    void solve_equalEmfsFaceToFaceAcrossMicroohms_agreesWithSolver() {
        assertAgreesWithSolver(
                withoutCurrentSources(new RandomNetworks(-2884804009392020659L, 1e-7, 1e9).everything(6)));
    }

    private static void assertAgreesWithSolver(Network network) {
        int count = network.elements().size();
        double[] emfV = new double[count];
        double[] ohm = new double[count];
        for (int i = 0; i < count; i++) {
            if (network.elements().get(i) instanceof Element.Source s) {
                emfV[i] = s.emfV();
                ohm[i] = s.seriesOhm();
            } else if (network.elements().get(i) instanceof Element.Resistance r) {
                ohm[i] = r.ohm();
            }
        }
        double[] currentA = new double[count];
        assertTrue(PreparedNetwork.of(network).orElseThrow().solve(emfV, ohm, currentA));
        Changes.assertCurrents(currentA, NetworkSolver.solve(network), 1e-9);
    }

    private static Network withoutCurrentSources(Network network) {
        List<Element> kept = network.elements().stream()
                .filter(e -> !(e instanceof Element.CurrentSource))
                .toList();
        return new Network(network.nodeCount(), kept, network.referencePreference());
    }

    @Test
    void solve_longLadderOfCells_staysWithinMemory() {
        Network network = ladder(PreparedNetwork.MOST_LOOPS);
        List<Element> elements = network.elements();
        double[] emfV = new double[elements.size()];
        double[] ohm = new double[elements.size()];
        for (int i = 0; i < ohm.length; i++) {
            emfV[i] = i % 3 == 1 ? 4 : 0;
            ohm[i] = i == 0 ? 1 : i % 3 == 1 ? 0.03 : 0.001;
        }
        double[] currentA = new double[ohm.length];
        assertTrue(PreparedNetwork.of(network).orElseThrow().solve(emfV, ohm, currentA));
        Changes.assertCurrents(currentA, NetworkSolver.solve(network), 1e-9);
    }

    @Test
    void of_moreLoopsThanPay_isRefused() {
        assertTrue(PreparedNetwork.of(ladder(PreparedNetwork.MOST_LOOPS + 1)).isEmpty());
    }

    /** So many cells side by side on one resistance, each closing a loop of its own. */
    private static Network ladder(int cells) {
        List<Element> elements = new ArrayList<>(List.of(new Element.Resistance(0, 1, 1)));
        for (int i = 0; i < cells; i++) {
            int node = 2 * i;
            elements.add(new Element.Source(node + 2, node + 3, 4, 0.03));
            elements.add(new Element.Resistance(node + 2, node, 0.001));
            elements.add(new Element.Resistance(node + 3, node + 1, 0.001));
        }
        return new Network(2 * cells + 2, elements, List.of(1));
    }

    private static Network twoSources(double firstOhm, double secondOhm, double loadOhm) {
        return new Network(
                2,
                List.of(
                        new Element.Source(1, 0, 1, firstOhm),
                        new Element.Source(1, 0, 1, secondOhm),
                        new Element.Resistance(1, 0, loadOhm)),
                List.of(0));
    }
}
