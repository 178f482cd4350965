package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.network.Circuits.amps;
import static org.sagwise.network.Circuits.cell;
import static org.sagwise.network.Circuits.ideal;
import static org.sagwise.network.Circuits.joint;
import static org.sagwise.network.Circuits.network;
import static org.sagwise.network.Circuits.ohms;
import static org.sagwise.network.Circuits.solve;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class NetworkSolverTest {
    private static final double EXACT = 1e-12;

    @Test
    void solve_noNodes_nothingToSay() {
        OperatingPoint point = solve(0);
        assertEquals(List.of(), point.findings());
        assertEquals(new Residual(0, 0, 0, 0, 0), point.residual());
    }

    @Test
    void solve_loneNode_potentialUnknown() {
        assertFalse(solve(1).isKnown(0));
    }

    @Test
    void solve_resistorsWithoutSource_noCurrentAndNoPotential() {
        OperatingPoint point = solve(3, ohms(0, 1, 2), ohms(1, 2, 3), ohms(2, 0, 4));
        assertFalse(point.isKnown(0));
        assertEquals(0, point.currentA(1));
        assertTrue(Double.isNaN(point.voltageV(0, 1)));
    }

    @Test
    void solve_openCell_restVoltageAndNoCurrent() {
        OperatingPoint point = solve(3, cell(1, 0, 4.14, 0.03), ohms(1, 2, 0.3));
        assertEquals(4.14, point.potentialV(1));
        assertEquals(4.14, point.potentialV(2));
        assertEquals(0.0, point.currentA(0));
        assertEquals(0.0, point.currentA(1));
    }

    @Test
    void solve_cellOnItself_shortCircuitCurrentOfItsResistance() {
        OperatingPoint point = solve(1, cell(0, 0, 4.2, 0.03));
        assertEquals(140, point.currentA(0), 140 * EXACT);
        assertEquals(0, point.potentialV(0));
    }

    @Test
    void solve_resistanceOnItself_noCurrent() {
        OperatingPoint point = solve(2, cell(1, 0, 4.2, 0.03), ohms(1, 1, 5), joint(1, 1));
        assertEquals(0, point.currentA(1));
        assertTrue(Double.isNaN(point.currentA(2)));
    }

    @Test
    void solve_twoIdealCellsSideBySide_shareEqually() {
        OperatingPoint point = solve(2, ideal(1, 0, 4.2), ideal(1, 0, 4.2), ohms(1, 0, 1));
        assertEquals(2.1, point.currentA(0), EXACT);
        assertEquals(2.1, point.currentA(1), EXACT);
        assertEquals(4.2, point.currentA(2), EXACT);
        assertEquals(List.of(), point.findings());
    }

    @Test
    void solve_twoIdealCellsInSeriesOnFourOhm_sameCurrentEachAsSideBySide() {
        OperatingPoint point = solve(3, ideal(1, 0, 4.2), ideal(2, 1, 4.2), ohms(2, 0, 4));
        assertEquals(2.1, point.currentA(0), EXACT);
        assertEquals(2.1, point.currentA(1), EXACT);
        assertEquals(8.4, point.voltageV(2, 0), EXACT);
    }

    @Test
    void solve_idealCellsJoinedByIdealLinks_jointsCarryTheirShare() {
        OperatingPoint point = solve(4, ideal(1, 0, 4.2), ideal(3, 2, 4.2), joint(3, 1), joint(0, 2), ohms(1, 0, 1));
        assertEquals(2.1, point.currentA(1), EXACT);
        assertEquals(2.1, point.currentA(2), EXACT);
        assertEquals(2.1, point.currentA(3), EXACT);
    }

    @Test
    void solve_threeIdealSourcesTwoInSeriesBesideOne_shareByNumberInBranch() {
        OperatingPoint point = solve(3, ideal(1, 0, 2), ideal(2, 1, 2), ideal(2, 0, 4), ohms(2, 0, 1));
        assertEquals(4.0 / 3, point.currentA(0), EXACT);
        assertEquals(4.0 / 3, point.currentA(1), EXACT);
        assertEquals(8.0 / 3, point.currentA(2), EXACT);
    }

    @Test
    void solve_loopOfJoints_theirCurrentsUntoldTheRestTold() {
        OperatingPoint point = solve(4, cell(1, 0, 4.2, 0.1), joint(1, 2), joint(1, 2), joint(2, 3), ohms(3, 0, 2));
        assertTrue(Double.isNaN(point.currentA(1)));
        assertTrue(Double.isNaN(point.currentA(2)));
        assertEquals(2, point.currentA(3), EXACT);
        assertEquals(2, point.currentA(4), EXACT);
    }

    @Test
    void solve_contradictingIdealSources_findingAndOtherIslandSolved() {
        OperatingPoint point =
                solve(4, ideal(1, 0, 4.2), ohms(1, 0, 1), ideal(1, 0, 3.7), cell(3, 2, 4.2, 0.1), ohms(3, 2, 2));
        Finding.ContradictingIdealSources finding =
                (Finding.ContradictingIdealSources) point.findings().get(0);
        assertEquals(List.of(0, 2), finding.elements());
        assertEquals(0.5, finding.excessV(), EXACT);
        assertEquals(1, point.findings().size());
        assertTrue(Double.isNaN(point.currentA(1)));
        assertFalse(point.isKnown(1));
        assertEquals(2, point.currentA(4), EXACT);
        assertEquals(2 * 4.2, point.residual().suppliedW(), EXACT * 10);
    }

    @Test
    void solve_idealSourceShortedByJoints_finding() {
        OperatingPoint point = solve(3, ideal(1, 0, 4.2), joint(1, 2), joint(2, 0));
        assertEquals(List.of(new Finding.ShortedIdealSource(0)), point.findings());
        assertTrue(Double.isNaN(point.currentA(0)));
        assertFalse(point.isKnown(1));
    }

    @Test
    void solve_idealSourceOnItself_finding() {
        OperatingPoint point = solve(1, ideal(0, 0, 4.2));
        assertEquals(List.of(new Finding.ShortedIdealSource(0)), point.findings());
    }

    @Test
    void solve_idealSourceOfNoVoltageShorted_noFinding() {
        OperatingPoint point = solve(2, ideal(1, 0, 0), joint(1, 0));
        assertEquals(List.of(), point.findings());
        assertEquals(0, point.potentialV(1));
    }

    @Test
    void solve_currentSourceBetweenIslands_finding() {
        OperatingPoint point = solve(3, cell(1, 0, 4.2, 0.1), amps(2, 1, 0.5));
        assertEquals(List.of(new Finding.NoReturnPath(1)), point.findings());
        assertTrue(Double.isNaN(point.currentA(0)));
    }

    @Test
    void solve_currentSourceOfNothingBetweenIslands_bothSolved() {
        OperatingPoint point = solve(3, cell(1, 0, 4.2, 0.1), amps(2, 1, 0));
        assertEquals(List.of(), point.findings());
        assertEquals(4.2, point.potentialV(1));
        assertFalse(point.isKnown(2));
        assertEquals(0, point.currentA(1));
    }

    @Test
    void solve_twoIslands_eachHasItsReference() {
        Network network =
                new Network(5, List.of(cell(1, 0, 4, 0.1), cell(3, 2, 3, 0.1), ohms(1, 4, 1)), List.of(3, 4, 1));
        OperatingPoint point = NetworkSolver.solve(network);
        assertEquals(0, point.potentialV(4));
        assertEquals(-4, point.potentialV(0), EXACT);
        assertEquals(0, point.potentialV(3));
        assertEquals(-3, point.potentialV(2), EXACT);
        assertEquals(0, point.island(1));
        assertEquals(1, point.island(3));
        assertTrue(Double.isNaN(point.voltageV(1, 3)));
    }

    @Test
    void solve_noPreferredReferenceInIsland_minusOfFirstSource() {
        Network network = new Network(3, List.of(ohms(0, 1, 1), cell(1, 2, 4, 0.1)), List.of());
        assertEquals(0, NetworkSolver.solve(network).potentialV(2));
        assertEquals(4, NetworkSolver.solve(network).potentialV(0), EXACT);
    }

    @Test
    void solve_reversedCellBesideAnother_loopCurrentFlowsWithNoLoad() {
        OperatingPoint point = solve(2, cell(1, 0, 4.2, 0.03), cell(0, 1, 4.2, 0.03), amps(0, 0, 1));
        assertEquals(8.4 / 0.06, point.currentA(0), 140 * EXACT);
        assertEquals(8.4 / 0.06, point.currentA(1), 140 * EXACT);
        assertEquals(0, point.voltageV(1, 0), EXACT);
    }

    @Test
    void solve_meterAcrossMicroOhmPath_readingKeepsItsDigits() {
        OperatingPoint point = solve(4, cell(1, 0, 4.2, 0.03), ohms(1, 2, 1e-7), ohms(2, 3, 1e7), ohms(3, 0, 1e-7));
        double expectedA = 4.2 / (1e7 + 0.03 + 2e-7);
        assertEquals(expectedA, point.currentA(1), expectedA * EXACT);
        assertEquals(0, point.residual().kclRelative(), 1e-9);
        assertEquals(0, point.residual().powerRelative(), 1e-9);
    }

    @Test
    void voltageAcross_microOhmJointAtCellVoltage_keepsItsDigits() {
        OperatingPoint point = solve(3, ideal(1, 0, 4.2), ohms(1, 2, 1e-7), amps(0, 2, 1.0 / 3), joint(1, 1));
        assertEquals(1e-7 / 3, point.voltageAcrossV(1), 1e-7 * EXACT);
        assertEquals(4.2, point.voltageAcrossV(0), EXACT);
        assertEquals(point.voltageV(0, 2), point.voltageAcrossV(2));
        assertEquals(0, point.voltageAcrossV(3));
    }

    @Test
    void solve_fourThousandJumpersBetweenTwoCells_answers() {
        List<Element> elements = new ArrayList<>(List.of(cell(1, 0, 4.2, 0.03), ohms(2, 0, 1)));
        for (int i = 0; i < 4000; i++) {
            elements.add(ohms(1, 2, 4));
        }
        OperatingPoint point = NetworkSolver.solve(new Network(3, elements, List.of(0)));
        assertEquals(4.2 / 1.031, point.currentA(1), EXACT);
        assertEquals(4.2 / 1.031 / 4000, point.currentA(3999), EXACT);
    }

    @Test
    void network_nodeOutOfRange_refused() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> network(2, ohms(0, 2, 1)));
        assertTrue(refused.getMessage().contains("node 2"));
    }
}
