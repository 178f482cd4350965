package org.sagwise.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.fixture.Circuits.NOTHING;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.parallel;
import static org.sagwise.fixture.Circuits.single;
import static org.sagwise.fixture.Circuits.turned;

import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Ledger.Entry;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

class LedgerTest {

    private static Ledger ledger(Scenario scenario) {
        return Ledger.of(Bench.of(scenario, NOTHING).fired());
    }

    private static Ledger.Row row(Ledger ledger, Entry entry) {
        return ledger.rows().stream()
                .filter(row -> row.entry() == entry)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void volts_ofOneCellOnOneCoil_areTheStepsOfTheLoop() {
        Ledger ledger = ledger(single(cell("A", 4.2, 50), 0.5));
        double currentA = 4.2 / 0.55;
        assertEquals(4.2, row(ledger, Entry.GIVEN).voltsV(), 1e-9);
        assertEquals(-0.05 * currentA, row(ledger, Entry.SAG).voltsV(), 1e-9);
        assertEquals(-0.5 * currentA, row(ledger, Entry.COILS).voltsV(), 1e-9);
        assertEquals(0, row(ledger, Entry.BALANCE).voltsV(), 1e-9);
    }

    /**
     * Hundreds of amps run in the ring of the two cells; for each ampere of the coil's: nothing.
     */
    @Test
    void volts_ofCellsThatFight_areLeftOut() {
        Ledger ledger = ledger(turned(parallel(1.0, cell("A", 4.2, 20), cell("B", 4.2, 21)), "B"));
        assertTrue(ledger.rows().stream().allMatch(row -> Double.isNaN(row.voltsV())));
        assertFalse(Double.isNaN(row(ledger, Entry.SAG).powerW()));
    }

    @Test
    void watts_ofAnIdealResistorInAnIdealLoop_areNoneThoughItsCurrentIsUnknown() {
        Scenario scenario = single(cell("A", 4.2, 50), 0.5)
                .plus(Part.of("bridge", PartKind.RESISTOR, "ohm", 0))
                .plus(ideal("bridge.1", "bridge.2"));
        Readings readings = Bench.of(scenario, NOTHING).fired();
        assertTrue(Double.isNaN(readings.part("bridge").orElseThrow().currentA()));
        assertEquals(0, readings.part("bridge").orElseThrow().powerW());
        assertFalse(Double.isNaN(readings.pack().efficiency()));
    }
}
