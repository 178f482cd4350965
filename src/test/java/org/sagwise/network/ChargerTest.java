package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.network.Circuits.amps;
import static org.sagwise.network.Circuits.cell;
import static org.sagwise.network.Circuits.charger;
import static org.sagwise.network.Circuits.ideal;
import static org.sagwise.network.Circuits.ohms;
import static org.sagwise.network.Circuits.solve;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChargerTest {
    private static final double CLOSE = 1e-9;

    private static void assertState(ChargerState expected, OperatingPoint point, int element) {
        assertEquals(Optional.of(expected), point.chargerState(element));
    }

    @Test
    void charger_emptyCell_constantCurrent() {
        OperatingPoint point = solve(2, cell(1, 0, 3.6, 0.05), charger(1, 0, 1, 4.2));
        assertState(ChargerState.CONSTANT_CURRENT, point, 1);
        assertEquals(1, point.currentA(1));
        assertEquals(-1, point.currentA(0), CLOSE);
        assertEquals(3.65, point.potentialV(1), CLOSE);
    }

    @Test
    void charger_nearlyFullCell_constantVoltage() {
        OperatingPoint point = solve(2, cell(1, 0, 4.18, 0.05), charger(1, 0, 1, 4.2));
        assertState(ChargerState.CONSTANT_VOLTAGE, point, 1);
        assertEquals(0.4, point.currentA(1), CLOSE);
        assertEquals(4.2, point.potentialV(1), 1e-15 * 10);
    }

    @Test
    void charger_bothSidesOfTheKnee_stateChanges() {
        // The knee lies at 4.2 V − 1 A · 0.05 Ω.
        OperatingPoint below = solve(2, cell(1, 0, 4.15 - 1e-7, 0.05), charger(1, 0, 1, 4.2));
        OperatingPoint above = solve(2, cell(1, 0, 4.15 + 1e-7, 0.05), charger(1, 0, 1, 4.2));
        assertState(ChargerState.CONSTANT_CURRENT, below, 1);
        assertState(ChargerState.CONSTANT_VOLTAGE, above, 1);
    }

    @Test
    void charger_fullCell_nothingFlows() {
        OperatingPoint point = solve(2, cell(1, 0, 4.2, 0.05), charger(1, 0, 1, 4.2));
        assertEquals(0, point.currentA(1), CLOSE);
    }

    @Test
    void charger_packAboveLimit_off() {
        OperatingPoint point = solve(2, cell(1, 0, 8.4, 0.05), charger(1, 0, 1, 4.2));
        assertState(ChargerState.OFF, point, 1);
        assertEquals(0, point.currentA(1));
        assertEquals(8.4, point.potentialV(1));
    }

    @Test
    void charger_nothingConnected_limitVoltageAtItsTerminals() {
        OperatingPoint point = solve(2, charger(1, 0, 1, 4.2));
        assertState(ChargerState.CONSTANT_VOLTAGE, point, 0);
        assertEquals(4.2, point.potentialV(1));
        assertEquals(0, point.currentA(0));
    }

    @Test
    void charger_shorted_constantCurrent() {
        OperatingPoint point = solve(2, ohms(1, 0, 0), charger(1, 0, 1, 4.2));
        assertState(ChargerState.CONSTANT_CURRENT, point, 1);
        assertEquals(1, point.currentA(0), CLOSE);
        assertEquals(0, point.potentialV(1));
    }

    @Test
    void charger_reversedCell_constantCurrentIntoIt() {
        OperatingPoint point = solve(2, cell(0, 1, 3.6, 0.05), charger(1, 0, 1, 4.2));
        assertState(ChargerState.CONSTANT_CURRENT, point, 1);
        assertEquals(-3.55, point.potentialV(1), CLOSE);
        assertEquals(1, point.currentA(0), CLOSE);
    }

    @Test
    void charger_onIdealSupply_followsIt() {
        assertState(ChargerState.OFF, solve(2, ideal(1, 0, 5), charger(1, 0, 1, 4.2)), 1);
        assertState(ChargerState.CONSTANT_CURRENT, solve(2, ideal(1, 0, 3), charger(1, 0, 1, 4.2)), 1);
        assertEquals(List.of(), solve(2, ideal(1, 0, 5), charger(1, 0, 1, 4.2)).findings());
    }

    @Test
    void charger_loadBesideCell_chargerAndCellShare() {
        OperatingPoint point = solve(2, cell(1, 0, 4.0, 0.05), charger(1, 0, 1, 4.2), ohms(1, 0, 1));
        // (4 − V)/0.05 + 1 = V
        double volt = (4 / 0.05 + 1) / (1 / 0.05 + 1);
        assertState(ChargerState.CONSTANT_CURRENT, point, 1);
        assertEquals(volt, point.potentialV(1), CLOSE);
    }

    @Test
    void charger_twoSideBySideDifferentLimits_higherOneGivesFirst() {
        OperatingPoint point = solve(2, cell(1, 0, 4.18, 0.05), charger(1, 0, 1, 4.2), charger(1, 0, 1, 4.22));
        assertState(ChargerState.OFF, point, 1);
        assertState(ChargerState.CONSTANT_VOLTAGE, point, 2);
        assertEquals(0.8, point.currentA(2), CLOSE);
    }

    @Test
    void charger_twoSideBySideOneAtItsCurrent_otherHoldsTheVoltage() {
        OperatingPoint point = solve(2, cell(1, 0, 4.1, 0.05), charger(1, 0, 5, 4.2), charger(1, 0, 1, 4.3));
        assertState(ChargerState.CONSTANT_VOLTAGE, point, 1);
        assertState(ChargerState.CONSTANT_CURRENT, point, 2);
        assertEquals(4.2, point.potentialV(1), CLOSE);
        assertEquals(1, point.currentA(1), 1e-7);
    }

    @Test
    void charger_twoInSeries_smallerCurrentRules() {
        OperatingPoint point = solve(3, cell(2, 0, 7, 0.5), charger(1, 0, 1, 4.2), charger(2, 1, 1.2, 4.2));
        assertState(ChargerState.CONSTANT_CURRENT, point, 1);
        assertState(ChargerState.CONSTANT_VOLTAGE, point, 2);
        assertEquals(7.5, point.potentialV(2), CLOSE);
        assertEquals(3.3, point.potentialV(1), CLOSE);
    }

    @Test
    void charger_twoEqualInSeries_answers() {
        OperatingPoint point = solve(3, cell(2, 0, 7, 0.5), charger(1, 0, 1, 4.2), charger(2, 1, 1, 4.2));
        assertEquals(List.of(), point.findings());
        assertEquals(-1, point.currentA(0), CLOSE);
    }

    @Test
    void charger_currentSourceAgainstIt_neverSinks() {
        OperatingPoint point = solve(2, amps(1, 0, 2), ohms(1, 0, 10), charger(1, 0, 1, 4.2));
        assertState(ChargerState.OFF, point, 2);
        assertEquals(20, point.potentialV(1), CLOSE);
    }

    @Test
    void charger_ofNoCurrent_answers() {
        OperatingPoint point = solve(2, cell(1, 0, 3.6, 0.05), charger(1, 0, 0, 4.2));
        assertEquals(0, point.currentA(1), CLOSE);
        assertEquals(List.of(), point.findings());
    }

    @Test
    void charger_feedingABoardWithinItsCurrent_boardRuns() {
        Element.Converter board = new Element.Converter(1, 0, 2, 0, 3.6, 0.9, 3.0, 50, 0.5, 8);
        OperatingPoint point = solve(3, charger(1, 0, 2, 4.2), ohms(2, 0, 1), board);
        assertState(ChargerState.CONSTANT_VOLTAGE, point, 0);
        assertEquals(Optional.of(ConverterState.RUNNING), point.converterState(2));
        assertEquals(4 / 4.2, point.currentA(0), CLOSE);
        assertEquals(4.2, point.potentialV(1), CLOSE);
    }

    @Test
    void charger_feedingABoardBeyondItsCurrent_boardStops() {
        Element.Converter board = new Element.Converter(1, 0, 2, 0, 36, 0.9, 3.0, 50, 0.5, 8);
        OperatingPoint point = solve(3, charger(1, 0, 2, 4.2), ohms(2, 0, 1), board);
        assertEquals(Optional.of(ConverterState.STOPPED_NO_SOLUTION), point.converterState(2));
        assertState(ChargerState.CONSTANT_VOLTAGE, point, 0);
        assertEquals(List.of(), point.findings());
    }

    @Test
    void charger_besideAPackUnderABoard_bothFeedIt() {
        Element.Converter board = new Element.Converter(1, 0, 2, 0, 18, 0.9, 3.0, 50, 0.5, 8);
        OperatingPoint point = solve(3, cell(1, 0, 4.0, 0.05), charger(1, 0, 1, 4.2), ohms(2, 0, 1), board);
        assertState(ChargerState.CONSTANT_CURRENT, point, 1);
        // A source of 4 V + 1 A · 0.05 Ω behind 0.05 Ω gives 20 W.
        double volt = (4.05 + Math.sqrt(4.05 * 4.05 - 4 * 0.05 * 20)) / 2;
        assertEquals(volt, point.potentialV(1), CLOSE);
        assertTrue(point.residual().powerRelative() < CLOSE);
    }
}
