package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.network.Circuits.amps;
import static org.sagwise.network.Circuits.cell;
import static org.sagwise.network.Circuits.ideal;
import static org.sagwise.network.Circuits.joint;
import static org.sagwise.network.Circuits.ohms;
import static org.sagwise.network.Circuits.solve;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.network.Element.Converter;

/**
 * Regulated boards. Expected values are closed forms: for a source of open voltage U behind R, the
 * input voltage at power p is the larger root of the quadratic V² − U·V + R·p = 0.
 */
class ConverterTest {
    private static final double CLOSE = 1e-9;

    /** Node 0 common minus, node 1 input, node 2 output; 1 Ω on the output. */
    private static OperatingPoint onOneOhm(Element.Source pack, Converter board) {
        return solve(3, pack, ohms(2, 0, 1), board);
    }

    private static Converter board(double powerW) {
        return new Converter(1, 0, 2, 0, powerW, 0.9, 3.0, 50, 0.5, 8);
    }

    private static double higherRootV(double openV, double ohm, double inputW) {
        return (openV + Math.sqrt(openV * openV - 4 * ohm * inputW)) / 2;
    }

    private static void assertState(ConverterState expected, OperatingPoint point, int element) {
        assertEquals(Optional.of(expected), point.converterState(element));
    }

    private static void assertNothingFlows(OperatingPoint point, int element) {
        assertEquals(0, point.currentA(element));
        assertEquals(0, point.outputCurrentA(element));
    }

    @Test
    void converter_withinAllLimits_wantedPowerAtHigherInputVoltage() {
        OperatingPoint point = onOneOhm(cell(1, 0, 8.4, 0.1), board(36));
        double inputV = higherRootV(8.4, 0.1, 36 / 0.9);
        assertState(ConverterState.RUNNING, point, 2);
        assertEquals(6, point.potentialV(2), CLOSE);
        assertEquals(6, point.outputCurrentA(2), CLOSE);
        assertEquals(inputV, point.potentialV(1), CLOSE);
        assertEquals(40 / inputV, point.currentA(2), CLOSE);
        assertEquals(40 / inputV, point.currentA(0), CLOSE);
        assertEquals(0, point.residual().powerRelative(), CLOSE);
        double behindTerminalsW = 6 * 6 * Stance.BOARD_OHM;
        assertEquals(36 + behindTerminalsW + 8.4 * 40 / inputV, point.residual().suppliedW(), 100 * CLOSE);
    }

    @Test
    void converter_idealSource_inputIsPowerOverVoltage() {
        OperatingPoint point = onOneOhm(ideal(1, 0, 8), board(36));
        assertState(ConverterState.RUNNING, point, 2);
        assertEquals(5, point.currentA(0), CLOSE);
    }

    @Test
    void converter_outputOnItsOwnNodes_sameAsWithCommonMinus() {
        Converter apart = new Converter(1, 0, 2, 3, 36, 0.9, 3.0, 50, 0.5, 8);
        OperatingPoint point = solve(4, cell(1, 0, 8.4, 0.1), ohms(2, 3, 1), apart);
        assertState(ConverterState.RUNNING, point, 2);
        assertEquals(6, point.voltageV(2, 3), CLOSE);
        assertEquals(higherRootV(8.4, 0.1, 40), point.potentialV(1), CLOSE);
        assertTrue(Double.isNaN(point.voltageV(2, 0)));
    }

    @Test
    void converter_powerJustDeliverable_runsAtHalfTheOpenVoltage() {
        // The most a source of 8 V behind 0.4 Ω delivers is 8²/(4 · 0.4) = 40 W, at 4 V and 10 A.
        double most = 40 * 0.9;
        OperatingPoint point = onOneOhm(cell(1, 0, 8, 0.4), board(most * (1 - 1e-9)));
        assertState(ConverterState.RUNNING, point, 2);
        assertEquals(4, point.potentialV(1), 4 * 1e-4);
    }

    @Test
    void converter_powerJustBeyond_stops() {
        OperatingPoint point = onOneOhm(cell(1, 0, 8, 0.4), board(36 * (1 + 1e-9)));
        assertState(ConverterState.STOPPED_NO_SOLUTION, point, 2);
        assertNothingFlows(point, 2);
        assertEquals(8, point.potentialV(1));
        assertEquals(0, point.currentA(1));
        assertEquals(0, point.potentialV(2));
    }

    @Test
    void converter_inputJustAboveCutoff_runs() {
        double inputV = higherRootV(4.2, 0.05, 20);
        OperatingPoint point = onOneOhm(cell(1, 0, 4.2, 0.05), cutoffAt(inputV * (1 - 1e-9)));
        assertState(ConverterState.RUNNING, point, 2);
    }

    @Test
    void converter_inputJustBelowCutoff_stops() {
        double inputV = higherRootV(4.2, 0.05, 20);
        OperatingPoint point = onOneOhm(cell(1, 0, 4.2, 0.05), cutoffAt(inputV * (1 + 1e-9)));
        assertState(ConverterState.STOPPED_CUTOFF, point, 2);
        assertNothingFlows(point, 2);
        assertEquals(4.2, point.potentialV(1));
    }

    private static Converter cutoffAt(double cutoffV) {
        return new Converter(1, 0, 2, 0, 18, 0.9, cutoffV, 50, 0.5, 8);
    }

    @Test
    void converter_inputCurrentJustAllowed_runs() {
        double inputA = 20 / higherRootV(4.2, 0.05, 20);
        OperatingPoint point = onOneOhm(cell(1, 0, 4.2, 0.05), inputAtMost(inputA * (1 + 1e-9)));
        assertState(ConverterState.RUNNING, point, 2);
    }

    @Test
    void converter_inputCurrentJustTooHigh_stops() {
        double inputA = 20 / higherRootV(4.2, 0.05, 20);
        OperatingPoint point = onOneOhm(cell(1, 0, 4.2, 0.05), inputAtMost(inputA * (1 - 1e-9)));
        assertState(ConverterState.STOPPED_INPUT_LIMIT, point, 2);
        assertNothingFlows(point, 2);
    }

    private static Converter inputAtMost(double maxInputA) {
        return new Converter(1, 0, 2, 0, 18, 0.9, 1, maxInputA, 0.5, 8);
    }

    @Test
    void converter_highLoadResistance_heldAtHighestOutput() {
        // 36 W into 1 Ω needs 6 V.
        OperatingPoint below = onOneOhm(ideal(1, 0, 8), outputWithin(0, 6 * (1 - 1e-6)));
        OperatingPoint above = onOneOhm(ideal(1, 0, 8), outputWithin(0, 6 * (1 + 1e-6)));
        assertState(ConverterState.OUTPUT_AT_MAX, below, 2);
        assertEquals(6 * (1 - 1e-6), below.potentialV(2), CLOSE);
        assertEquals(36 * (1 - 1e-6) * (1 - 1e-6) / 0.9 / 8, below.currentA(2), CLOSE);
        assertState(ConverterState.RUNNING, above, 2);
    }

    @Test
    void converter_lowLoadResistance_heldAtLowestOutput() {
        OperatingPoint above = onOneOhm(ideal(1, 0, 8), outputWithin(6 * (1 + 1e-6), 10));
        OperatingPoint below = onOneOhm(ideal(1, 0, 8), outputWithin(6 * (1 - 1e-6), 10));
        assertState(ConverterState.OUTPUT_AT_MIN, above, 2);
        assertEquals(6 * (1 + 1e-6), above.potentialV(2), CLOSE);
        assertState(ConverterState.RUNNING, below, 2);
    }

    private static Converter outputWithin(double outMinV, double outMaxV) {
        return new Converter(1, 0, 2, 0, 36, 0.9, 3, 50, outMinV, outMaxV);
    }

    @Test
    void converter_nothingOnOutput_idleAtHighestOutput() {
        OperatingPoint point = solve(3, cell(1, 0, 8.4, 0.1), board(36));
        assertState(ConverterState.IDLE, point, 1);
        assertNothingFlows(point, 1);
        assertEquals(8, point.potentialV(2), CLOSE);
        assertEquals(8.4, point.potentialV(1));
    }

    @Test
    void converter_noPowerWanted_idle() {
        OperatingPoint point = onOneOhm(cell(1, 0, 8.4, 0.1), board(0));
        assertState(ConverterState.IDLE, point, 2);
        assertNothingFlows(point, 2);
    }

    @Test
    void converter_nothingOnInput_idle() {
        OperatingPoint point = solve(3, ohms(2, 0, 1), board(36));
        assertState(ConverterState.IDLE, point, 1);
        assertNothingFlows(point, 1);
        assertFalse(point.isKnown(2));
    }

    @Test
    void converter_meterAloneOnInput_idle() {
        OperatingPoint point = solve(3, ohms(2, 0, 1), ohms(1, 0, 1e7), board(36));
        assertState(ConverterState.IDLE, point, 2);
    }

    @Test
    void converter_sourceOfNoVoltage_idle() {
        assertState(ConverterState.IDLE, onOneOhm(cell(1, 0, 0, 0.1), board(36)), 2);
        assertState(ConverterState.IDLE, onOneOhm(ideal(1, 0, 0), board(36)), 2);
    }

    @Test
    void converter_sourceOfNoVoltageAndNoLoad_idle() {
        assertState(ConverterState.IDLE, solve(3, cell(1, 0, 0, 0.1), board(36)), 1);
    }

    @Test
    void converter_packReversed_stopsBelowCutoff() {
        OperatingPoint point = onOneOhm(cell(0, 1, 8.4, 0.1), board(36));
        assertState(ConverterState.STOPPED_CUTOFF, point, 2);
        assertNothingFlows(point, 2);
    }

    @Test
    void converter_outputShorted_stops() {
        OperatingPoint joined = solve(3, cell(1, 0, 8.4, 0.1), joint(2, 0), board(36));
        assertState(ConverterState.STOPPED_OUTPUT_SHORTED, joined, 2);
        assertNothingFlows(joined, 2);
        OperatingPoint sameNode = solve(2, cell(1, 0, 8.4, 0.1), new Converter(1, 0, 0, 0, 36, 0.9, 3.0, 50, 0.5, 8));
        assertState(ConverterState.STOPPED_OUTPUT_SHORTED, sameNode, 1);
    }

    @Test
    void converter_loadAroundAMicroOhm_shortedBelowAndNotAbove() {
        Converter anyVoltage = new Converter(1, 0, 2, 0, 4, 1, 3.0, 50, 0, 8);
        OperatingPoint below = solve(3, cell(1, 0, 8.4, 0.1), ohms(2, 0, 0.99e-6), anyVoltage);
        OperatingPoint above = solve(3, cell(1, 0, 8.4, 0.1), ohms(2, 0, 1.01e-6), anyVoltage);
        assertState(ConverterState.STOPPED_OUTPUT_SHORTED, below, 2);
        assertState(ConverterState.RUNNING, above, 2);
        assertEquals(4, above.potentialV(2) * above.outputCurrentA(2), 4 * CLOSE);
    }

    @Test
    void converter_inputOnOneNode_idle() {
        OperatingPoint point = solve(2, cell(0, 1, 8.4, 0.1), new Converter(0, 0, 1, 0, 36, 0.9, 3.0, 50, 0.5, 8));
        assertState(ConverterState.IDLE, point, 1);
    }

    @Test
    void converter_outputHeldHigherFromOutside_takesNothing() {
        OperatingPoint point = solve(4, cell(1, 0, 8.4, 0.1), cell(2, 0, 12.6, 0.1), ohms(2, 0, 1), board(36));
        assertState(ConverterState.IDLE, point, 3);
        assertNothingFlows(point, 3);
        assertEquals(12.6 / 1.1, point.potentialV(2), CLOSE);
    }

    @Test
    void converter_batteryOnOutput_chargesItWithTheWantedPower() {
        OperatingPoint point = solve(3, cell(1, 0, 8.4, 0.1), cell(2, 0, 4, 0.5), board(10));
        // V · (V − 4) / 0.5 = 10
        double outputV = (4 + Math.sqrt(16 + 4 * 5)) / 2;
        assertState(ConverterState.RUNNING, point, 2);
        assertEquals(outputV, point.potentialV(2), CLOSE);
    }

    @Test
    void converter_loadDrainedFromOutside_stillBringsTheWantedPower() {
        OperatingPoint point = solve(3, cell(1, 0, 8.4, 0.1), ohms(2, 0, 1), amps(2, 0, 2), board(10));
        // V · (V − 2) = 10
        double outputV = (2 + Math.sqrt(4 + 40)) / 2;
        assertEquals(outputV, point.potentialV(2), CLOSE);
    }

    @Test
    void converter_sharedReturnWire_powerStillBalances() {
        // Input and output return through the same 20 mΩ to the pack's minus.
        OperatingPoint point = solve(4, cell(1, 3, 8.4, 0.1), ohms(3, 0, 0.02), ohms(2, 3, 1), board(36));
        assertState(ConverterState.RUNNING, point, 3);
        double outputW = point.voltageV(2, 0) * point.outputCurrentA(3);
        double inputW = point.voltageV(1, 0) * point.currentA(3);
        assertEquals(36, outputW, 36 * CLOSE);
        assertEquals(40, inputW, 40 * CLOSE);
        assertEquals(0, point.residual().kclRelative(), CLOSE);
    }

    @Test
    void converter_twoOnOnePack_bothSagIt() {
        Converter second = new Converter(1, 0, 3, 0, 9, 0.9, 3.0, 50, 0.5, 8);
        OperatingPoint point = solve(4, cell(1, 0, 8.4, 0.1), ohms(2, 0, 1), ohms(3, 0, 2), board(36), second);
        double inputV = higherRootV(8.4, 0.1, 50);
        assertState(ConverterState.RUNNING, point, 3);
        assertState(ConverterState.RUNNING, point, 4);
        assertEquals(inputV, point.potentialV(1), CLOSE);
        assertEquals(40 / inputV, point.currentA(3), CLOSE);
        assertEquals(10 / inputV, point.currentA(4), CLOSE);
    }

    @Test
    void converter_twoJustDeliverable_bothRun() {
        OperatingPoint point = twoOfEighteenWatt(cell(1, 0, 8, 0.4 * (1 - 1e-6)));
        assertState(ConverterState.RUNNING, point, 3);
        assertState(ConverterState.RUNNING, point, 4);
        assertEquals(4, point.potentialV(1), 0.01);
    }

    @Test
    void converter_twoJustTooMuch_oneStopsTheOtherRuns() {
        OperatingPoint point = twoOfEighteenWatt(cell(1, 0, 8, 0.4 * (1 + 1e-6)));
        long running = List.of(3, 4).stream()
                .filter(e -> point.converterState(e).orElseThrow().delivers())
                .count();
        assertEquals(1, running);
        assertEquals(List.of(), point.findings());
        assertEquals(higherRootV(8, 0.4, 20), point.potentialV(1), 1e-5);
    }

    private static OperatingPoint twoOfEighteenWatt(Element.Source pack) {
        Converter second = new Converter(1, 0, 3, 0, 18, 0.9, 1.0, 50, 0.5, 8);
        Converter first = new Converter(1, 0, 2, 0, 18, 0.9, 1.0, 50, 0.5, 8);
        return solve(4, pack, ohms(2, 0, 1), ohms(3, 0, 1), first, second);
    }

    @Test
    void converter_feedingAnother_highestVoltageBetweenThem() {
        Converter second = new Converter(2, 0, 3, 0, 9, 0.9, 3.0, 50, 0.5, 8);
        OperatingPoint point = solve(4, cell(1, 0, 8.4, 0.1), ohms(3, 0, 1), board(36), second);
        assertState(ConverterState.OUTPUT_AT_MAX, point, 2);
        assertState(ConverterState.RUNNING, point, 3);
        assertEquals(8, point.potentialV(2), CLOSE);
        assertEquals(3, point.potentialV(3), CLOSE);
        assertEquals(10.0 / 8, point.currentA(3), CLOSE);
        double inputV = higherRootV(8.4, 0.1, 10 / 0.9);
        assertEquals(inputV, point.potentialV(1), CLOSE);
    }

    @Test
    void converter_feedingAHungrierOne_neverHangsAndBalances() {
        Converter second = new Converter(2, 0, 3, 0, 60, 0.9, 3.0, 50, 0.5, 9);
        OperatingPoint point = solve(4, cell(1, 0, 8.4, 0.01), ohms(3, 0, 1), board(36), second);
        assertTrue(point.residual().kclRelative() < CLOSE);
        assertTrue(point.converterState(3).isPresent());
    }

    @Test
    void converter_feedingItself_idle() {
        Converter ring = new Converter(1, 0, 1, 0, 36, 0.9, 3.0, 50, 0.5, 8);
        OperatingPoint point = solve(2, ohms(1, 0, 1), ring);
        assertFalse(point.converterState(1).orElseThrow().delivers());
        assertEquals(0, point.currentA(0));
    }

    @Test
    void converter_twoOutputsJoined_answersWithAState() {
        Converter second = new Converter(1, 0, 2, 0, 9, 0.9, 3.0, 50, 0.5, 8);
        OperatingPoint point = solve(3, cell(1, 0, 8.4, 0.1), ohms(2, 0, 1), board(36), second);
        assertEquals(0, point.residual().kclRelative(), CLOSE);
        assertTrue(
                point.converterState(2).isPresent() && point.converterState(3).isPresent());
    }

    @Test
    void converter_twoInputsInSeries_answersWithAState() {
        Converter upper = new Converter(2, 1, 3, 4, 9, 0.9, 1, 50, 0.5, 8);
        Converter lower = new Converter(1, 0, 5, 6, 9, 0.9, 1, 50, 0.5, 8);
        OperatingPoint point = solve(7, cell(2, 0, 16, 0.1), ohms(3, 4, 1), ohms(5, 6, 1), upper, lower);
        assertFalse(point.converterState(3).orElseThrow().delivers());
        assertFalse(point.converterState(4).orElseThrow().delivers());
    }

    @Test
    void converter_inputOnContradictingSources_idleAndFinding() {
        OperatingPoint point = solve(4, ideal(1, 0, 8), ideal(1, 0, 4), ohms(2, 3, 1), boardApart());
        assertState(ConverterState.IDLE, point, 3);
        assertEquals(1, point.findings().size());
    }

    private static Converter boardApart() {
        return new Converter(1, 0, 2, 3, 36, 0.9, 3.0, 50, 0.5, 8);
    }

    @Test
    void converter_valuesOutOfRange_refused() {
        assertThrows(IllegalArgumentException.class, () -> new Converter(1, 0, 2, 0, 36, 1.01, 3, 50, 0.5, 8));
        assertThrows(IllegalArgumentException.class, () -> new Converter(1, 0, 2, 0, 36, 0, 3, 50, 0.5, 8));
        assertThrows(IllegalArgumentException.class, () -> new Converter(1, 0, 2, 0, 36, 0.9, 3, 50, 8.1, 8));
        assertThrows(IllegalArgumentException.class, () -> new Converter(1, 0, 2, 0, Double.NaN, 0.9, 3, 50, 0.5, 8));
    }

    @Test
    void outputCurrent_ofAResistor_refused() {
        OperatingPoint point = onOneOhm(cell(1, 0, 8.4, 0.1), board(36));
        assertThrows(IllegalArgumentException.class, () -> point.outputCurrentA(1));
    }
}
