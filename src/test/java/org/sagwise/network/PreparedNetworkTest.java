package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.util.List;

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

        OperatingPoint point =
                NetworkSolver.solve(
                        new Network(
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
        Network network =
                new Network(2, List.of(new Element.LimitedSource(1, 0, 1, 4.2)), List.of());

        assertTrue(PreparedNetwork.of(network).isEmpty());
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
