package org.sagwise.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.fixture.Circuits.NOTHING;
import static org.sagwise.fixture.Circuits.button;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.ideal;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/** What a reverse guard costs where it conducts, and what stays away where it blocks. */
class ReverseGuardTest {

    private static final double CLOSE = 1e-9;

    /** A diode of 0.4 V without resistance, between cell and button. */
    private static Scenario ring(String first, String second) {
        Part diode = Part.of("G", PartKind.REVERSE_GUARD, "type", "diode", "drop_V", 0.4, "mohm", 0, "rating_A", 10);
        return Scenario.of(
                        "Ring",
                        List.of(cell("A", 4.2, 0), diode, button(0), coil(0.38)),
                        List.of(
                                ideal("A.+", "G." + first),
                                ideal("G." + second, "fire.1"),
                                ideal("fire.2", "coil.1"),
                                ideal("coil.2", "A.-")))
                .pressed();
    }

    private static Readings fired(Scenario scenario) {
        return Bench.of(scenario, NOTHING).fired();
    }

    @Test
    void diode_inARing_costsItsVoltsTimesTheAmps() {
        // (4.2 − 0.4) V / 0.38 Ω = 10 A, and 0.4 V · 10 A = 4 W
        Readings readings = fired(ring("in", "out"));
        PartReading diode = readings.part("G").orElseThrow();
        assertEquals(10, diode.currentA(), 1e-7);
        assertEquals(4, diode.powerW(), 1e-7);
        assertEquals(4, readings.pack().pathHeatW(), 1e-7);
        Ledger ledger = Ledger.of(readings);
        Ledger.Row row = ledger.rows().stream()
                .filter(r -> r.entry() == Ledger.Entry.GUARDS)
                .findFirst()
                .orElseThrow();
        assertEquals(-0.4, row.voltsV(), 1e-7);
        assertEquals(0, ledger.rows().get(ledger.rows().size() - 1).powerW(), CLOSE);
    }

    @Test
    void diode_inARing_isAStepOfTheStaircase() {
        Staircase stairs = Staircase.of(Bench.of(ring("in", "out"), NOTHING), Press.HELD);
        Staircase.Step step = step(stairs);
        assertEquals(Staircase.Kind.GUARD, step.kind());
        assertEquals(-0.4, step.riseV(), 1e-7);
        assertEquals(
                0, stairs.steps().stream().mapToDouble(Staircase.Step::riseV).sum(), CLOSE);
    }

    @Test
    void diode_theWrongWayInARow_blocksEverythingAndIsAGap() {
        Scenario wrong = ring("out", "in");
        Readings readings = fired(wrong);
        assertEquals(
                PartReading.State.BLOCKING, readings.part("G").orElseThrow().state());
        assertEquals(0, readings.cells().get(0).currentA());
        assertEquals(Optional.of(0.0), readings.coils().stream().findFirst().map(CoilReading::powerW));
        assertEquals(
                Staircase.Kind.GAP,
                step(Staircase.of(Bench.of(wrong, NOTHING), Press.HELD)).kind());
    }

    private static Staircase.Step step(Staircase stairs) {
        return stairs.steps().stream()
                .filter(s -> s.part().equals("G"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void guards_behindATurnedCellSideBySide_nothingFlowsBetweenTheCells() {
        Part guard = Part.of("G", PartKind.REVERSE_GUARD, "rating_A", 30);
        Part other = Part.of("H", PartKind.REVERSE_GUARD, "rating_A", 30);
        Scenario pair = Scenario.of(
                "Pair",
                List.of(cell("A", 4.2, 20), cell("B", 4.2, 20), guard, other),
                List.of(ideal("A.+", "G.in"), ideal("B.-", "H.in"), ideal("G.out", "H.out"), ideal("A.-", "B.+")));
        Readings readings = fired(pair);
        assertTrue(readings.cells().stream().allMatch(cell -> cell.currentA() == 0));
        assertEquals(
                PartReading.State.BLOCKING, readings.part("H").orElseThrow().state());
        assertEquals(-8.4, readings.part("H").orElseThrow().voltsV(), CLOSE);
    }

    @Test
    void charger_throughAGuardThatPointsAtIt_chargesNothing() {
        Part guard = Part.of("G", PartKind.REVERSE_GUARD, "rating_A", 30);
        Part charger = Part.of("charger", PartKind.CHARGER, "current_A", 1);
        Scenario scenario = Scenario.of(
                "Charging",
                List.of(cell("A", 3.6, 20), guard, charger),
                List.of(ideal("A.+", "G.in"), ideal("G.out", "charger.+"), ideal("charger.-", "A.-")));
        assertEquals(0, fired(scenario).cells().get(0).currentA(), 1e-6);
    }
}
