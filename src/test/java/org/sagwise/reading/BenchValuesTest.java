package org.sagwise.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.fixture.Circuits.NOTHING;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.parallel;
import static org.sagwise.fixture.Circuits.series;
import static org.sagwise.fixture.Circuits.single;
import static org.sagwise.fixture.Circuits.touch;
import static org.sagwise.fixture.Circuits.turned;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** The numbers that a bench must show: common practice, no source, and sums done by hand. */
class BenchValuesTest {

    private static final double EXACT = 1e-9;

    private static Readings readings(Scenario scenario) {
        return Bench.of(scenario, NOTHING).now();
    }

    @Test
    void readings_twoIdealCellsInParallelOnOneOhm_give17Point64Watts() {
        Readings readings = readings(parallel(1.0, cell("A", 4.2, 0), cell("B", 4.2, 0)));
        CoilReading coil = readings.coils().get(0);
        assertEquals(4.2, coil.voltsV(), EXACT);
        assertEquals(4.2, coil.currentA(), EXACT);
        assertEquals(17.64, coil.powerW(), EXACT);
        assertEquals(2.1, readings.cell("A").orElseThrow().currentA(), EXACT);
        assertEquals(2.1, readings.cell("B").orElseThrow().currentA(), EXACT);
    }

    @Test
    void readings_twoIdealCellsInSeriesOnFourOhms_giveTheSameWatts() {
        Readings readings = readings(series(4.0, cell("A", 4.2, 0), cell("B", 4.2, 0)));
        CoilReading coil = readings.coils().get(0);
        assertEquals(8.4, coil.voltsV(), EXACT);
        assertEquals(2.1, coil.currentA(), EXACT);
        assertEquals(17.64, coil.powerW(), EXACT);
        assertEquals(2.1, readings.cell("A").orElseThrow().currentA(), EXACT);
    }

    @Test
    void readings_benchCheck_showsSagAndDrop() {
        double currentA = 3.38 / 0.30;
        Scenario scenario = Scenario.of(
                        "Bench check",
                        List.of(
                                cell("A", 4.14, 1000 * 0.34 / currentA),
                                Part.of("fire", PartKind.SWITCH, "closed_mohm", 3),
                                coil(0.30)),
                        List.of(
                                touch("A.+", "fire.1", 10),
                                touch("fire.2", "coil.1", 10),
                                touch("coil.2", "A.-", 1000 * 0.42 / currentA - 23)))
                .pressed();
        Readings readings = readings(scenario);
        CellReading cell = readings.cells().get(0);
        assertEquals(3.80, cell.terminalV(), 1e-6);
        assertEquals(0.34, cell.sagV(), 1e-6);
        assertEquals(3.38, readings.coils().get(0).voltsV(), 1e-6);
        assertEquals(0.42, readings.pack().dropV(), 1e-6);
        assertEquals(11.3, cell.currentA(), 0.05);
        assertEquals(0.030, cell.internalOhm(), 0.0005);
    }

    @Test
    void readings_reversedCellInParallel_loopsWithTheSwitchOpen() {
        Scenario scenario = turned(parallel(1.0, cell("A", 4.2, 20), cell("B", 4.2, 20)), "B")
                .released();
        Readings readings = readings(scenario);
        assertEquals(2 * 4.2 / 0.040, readings.cell("A").orElseThrow().currentA(), 1e-6);
        assertEquals(0, readings.cell("A").orElseThrow().terminalV(), 1e-9);
        assertEquals(0, readings.coils().get(0).currentA(), EXACT);
    }

    @Test
    void readings_oneOfThreeInSeriesReversed_isChargedByTheOthers() {
        Scenario scenario = turned(series(4.0, cell("A", 4.2, 20), cell("B", 4.2, 20), cell("C", 4.2, 20)), "B");
        Readings readings = readings(scenario);
        double currentA = 4.2 / (4.0 + 0.060);
        assertEquals(currentA, readings.cell("A").orElseThrow().currentA(), EXACT);
        assertEquals(-currentA, readings.cell("B").orElseThrow().currentA(), EXACT);
        assertEquals(4.2 + currentA * 0.020, readings.cell("B").orElseThrow().terminalV(), EXACT);
        assertEquals(4.2 * currentA, readings.pack().chargingW(), EXACT);
    }

    @Test
    void readings_unequalCellsInParallel_shareByResistance() {
        Readings readings = readings(parallel(0.25, cell("A", 4.2, 20), cell("B", 4.2, 60)));
        double a = readings.cell("A").orElseThrow().currentA();
        double b = readings.cell("B").orElseThrow().currentA();
        assertEquals(3, a / b, EXACT);
    }

    @Test
    void readings_openCircuit_isNoError() {
        Readings readings = readings(single(cell("A", 4.2, 20), 1.0).released());
        assertEquals(0, readings.cells().get(0).currentA(), EXACT);
        assertEquals(4.2, readings.cells().get(0).terminalV(), EXACT);
        assertEquals(PartReading.State.OPEN, readings.part("fire").orElseThrow().state());
        assertTrue(Double.isNaN(readings.pack().dropV()));
    }

    @Test
    void readings_linkOnCanOfSoundWrap_joinsNothing() {
        Scenario scenario = Scenario.of("Can", List.of(cell("A", 4.2, 20)), List.of(touch("A.can", "A.+", 50)));
        assertEquals(0, readings(scenario).links().get(0).currentA(), EXACT);
        Scenario torn = scenario.withPart("A", part -> part.with("wrap", "torn"));
        assertEquals(4.2 / 0.070, Math.abs(readings(torn).links().get(0).currentA()), 1e-9);
    }

    @Test
    void readings_twoCoilsSideBySide_countTheirTotal() {
        Scenario scenario = single(cell("A", 4.2, 0), 1.0)
                .plus(Part.of("other", PartKind.COIL, "ohm", 2.0))
                .plus(ideal("other.1", "coil.1"))
                .plus(ideal("other.2", "coil.2"));
        assertEquals(6.3, readings(scenario).pack().loadCurrentA(), EXACT);
    }

    @Test
    void readings_twoCoilsInARow_countTheirCommonCurrent() {
        Scenario scenario = Scenario.of(
                        "Row",
                        List.of(cell("A", 4.2, 0), coil(1.0), Part.of("other", PartKind.COIL, "ohm", 1.0)),
                        List.of(ideal("A.+", "coil.1"), ideal("coil.2", "other.1"), ideal("other.2", "A.-")))
                .pressed();
        assertEquals(2.1, readings(scenario).pack().loadCurrentA(), EXACT);
    }
}
