package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.network.Circuits.amps;
import static org.sagwise.network.Circuits.cell;
import static org.sagwise.network.Circuits.charger;
import static org.sagwise.network.Circuits.ideal;
import static org.sagwise.network.Circuits.ohms;
import static org.sagwise.network.Circuits.solve;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.network.Element.OneWay;

/**
 * One-way elements against worked examples with silicon diodes of 0.7 V and no resistance. Those
 * named Boylestad are of Boylestad, Nashelsky, Electronic Devices and Circuit Theory, chapter 2,
 * from memory; the figures of the third also stand so in a solution printed elsewhere.
 */
class OneWayTest {
    private static final double CLOSE = 1e-8;
    private static final double SILICON_V = 0.7;

    private static OneWay silicon(int from, int to) {
        return new OneWay(from, to, SILICON_V, 0);
    }

    @Test
    void series_boylestad_forwardCurrent() {
        // E = 8 V, R = 2.2 kΩ: V_R = 7.3 V, I = 3.32 mA
        OperatingPoint point = solve(3, ideal(1, 0, 8), silicon(1, 2), ohms(2, 0, 2200));
        assertEquals(3.32e-3, point.currentA(1), 0.005e-3);
        assertEquals(7.3, point.voltageV(2, 0), CLOSE);
        assertFalse(point.blocks(1));
    }

    @Test
    void series_boylestadTurnedRound_nothingFlows() {
        // The same diode turned: I = 0, V_R = 0, V_D = 8 V
        OperatingPoint point = solve(3, ideal(1, 0, 8), silicon(2, 1), ohms(2, 0, 2200));
        assertTrue(point.blocks(1));
        assertEquals(0, point.currentA(1));
        assertEquals(0, point.voltageV(2, 0));
        assertEquals(-8, point.voltageAcrossV(1), CLOSE);
    }

    @Test
    void seriesParallel_boylestad_currents() {
        // 20 V through D1, then D2 beside 3.3 kΩ, then 5.6 kΩ: 3.32 mA, 0.212 mA, 3.11 mA
        OperatingPoint point =
                solve(4, ideal(1, 0, 20), silicon(1, 2), silicon(2, 3), ohms(2, 3, 3300), ohms(3, 0, 5600));
        assertEquals(3.32e-3, point.currentA(4), 0.005e-3);
        assertEquals(0.212e-3, point.currentA(3), 0.0005e-3);
        assertEquals(3.11e-3, point.currentA(2), 0.005e-3);
    }

    @Test
    void sideBySide_boylestad_shareTheCurrent() {
        // 10 V, 0.33 kΩ, two alike: 28.18 mA, 14.09 mA each
        OperatingPoint point = solve(3, ideal(1, 0, 10), ohms(1, 2, 330), silicon(2, 0), silicon(2, 0));
        assertEquals(28.18e-3, point.currentA(1), 0.005e-3);
        assertEquals(14.09e-3, point.currentA(2), 0.005e-3);
        assertEquals(point.currentA(2), point.currentA(3), CLOSE);
    }

    @Test
    void twoSources_boylestad_theLowerIsBlocked() {
        // 20 V through D1 and 2.2 kΩ into 4 V; D2 the other way round: (20 − 4 − 0.7) V / 2.2 kΩ = 6.95 mA
        OperatingPoint point =
                solve(4, ideal(1, 0, 20), ohms(1, 2, 2200), silicon(2, 3), silicon(3, 2), ideal(3, 0, 4));
        assertEquals(6.95e-3, point.currentA(2), 0.005e-3);
        assertTrue(point.blocks(3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, -10})
    void bridgeRectifier_eitherPolarity_sameCurrentThroughTheLoad(double volts) {
        // Two drops in the way: (10 − 1.4) V / 1 kΩ = 8.6 mA, by Kirchhoff's voltage law
        OperatingPoint point = solve(
                4, ideal(1, 0, volts), silicon(1, 2), silicon(0, 2), silicon(3, 1), silicon(3, 0), ohms(2, 3, 1000));
        assertEquals(8.6e-3, point.currentA(5), CLOSE);
        assertEquals(List.of(), point.findings());
        assertEquals(volts < 0, point.blocks(1));
        assertEquals(volts > 0, point.blocks(2));
    }

    @Test
    void cellThroughOneWay_closedForm() {
        // I = (E − V_f) / (R_i + R_f + R) = (4.2 − 0.4) / (0.02 + 0.005 + 0.375) = 9.5 A
        OperatingPoint point = solve(3, cell(1, 0, 4.2, 0.02), new OneWay(1, 2, 0.4, 0.005), ohms(2, 0, 0.375));
        assertEquals(9.5, point.currentA(1), CLOSE);
        assertEquals(0.4 + 9.5 * 0.005, point.voltageAcrossV(1), CLOSE);
        assertEquals(9.5 * (0.4 + 9.5 * 0.005), point.voltageV(1, 2) * point.currentA(1), 1e-7);
    }

    @Test
    void belowItsDrop_blocks() {
        OperatingPoint point = solve(3, ideal(1, 0, 0.3), new OneWay(1, 2, 0.4, 0), ohms(2, 0, 1));
        assertTrue(point.blocks(1));
        assertEquals(0, point.currentA(2));
    }

    @Test
    void nothingJoined_noCurrentAndNoFinding() {
        OperatingPoint point = solve(3, ideal(1, 0, 4.2), new OneWay(1, 2, 0, 0.002));
        assertEquals(0, point.currentA(1));
        assertEquals(4.2, point.potentialV(2), CLOSE);
        assertEquals(List.of(), point.findings());
    }

    @Test
    void faceToFace_nothingFlowsEitherWay() {
        for (double volts : List.of(4.2, -4.2)) {
            OperatingPoint point = solve(4, ideal(1, 0, volts), silicon(1, 2), silicon(3, 2), ohms(3, 0, 1));
            assertEquals(0, point.currentA(1), CLOSE);
            assertEquals(0, point.currentA(3), CLOSE);
            assertTrue(point.blocks(1) || point.blocks(2));
        }
    }

    @Test
    void voltmeterBehindOneTurnedRound_showsNothing() {
        OperatingPoint point = solve(3, ideal(1, 0, 4.2), new OneWay(2, 1, 0, 0.002), ohms(2, 0, 10e6));
        assertTrue(point.blocks(1));
        assertEquals(0, point.voltageV(2, 0));
    }

    @Test
    void currentSource_forcedBackwards_isToldAndNotFollowed() {
        OperatingPoint point = solve(2, amps(0, 1, 1), new OneWay(1, 0, 0, 0.002), ohms(1, 0, 5));
        assertTrue(point.blocks(1));
        assertEquals(-1, point.currentA(2), CLOSE);
    }

    @Test
    void chargerBehindOneTurnedRound_chargesNothing() {
        OperatingPoint wrong = solve(3, charger(2, 0, 1, 4.2), new OneWay(1, 2, 0, 0.002), cell(1, 0, 3.6, 0.05));
        assertEquals(0, wrong.currentA(2), CLOSE);
        OperatingPoint right = solve(3, charger(2, 0, 1, 4.2), new OneWay(2, 1, 0, 0.002), cell(1, 0, 3.6, 0.05));
        assertEquals(-1, right.currentA(2), CLOSE);
    }

    @Test
    void boardBehindOne_drawsThroughIt() {
        OperatingPoint point =
                solve(4, cell(1, 0, 8, 0.05), new OneWay(1, 2, 0.4, 0.005), Circuits.board(2, 0, 3, 0), ohms(3, 0, 1));
        assertEquals(point.currentA(2), point.currentA(1), CLOSE);
        assertEquals(40, 0.92 * point.voltageV(2, 0) * point.currentA(2), 1e-6);
        assertEquals(List.of(), point.findings());
    }
}
