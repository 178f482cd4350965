package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

/**
 * The values that every build must show, from the file to the JSON. Common practice, no source: a
 * full cell has 4.2 V; the sums are Ohm's and Kirchhoff's laws done by hand beside each check.
 */
class EveryBuildShowsTest {

    private static final double EXACT = 1e-9;

    private static JsonNode readings(String demo, String... more) {
        String[] args = new String[more.length + 3];
        args[0] = "readings";
        args[1] = Cli.demo(demo);
        args[2] = "--json";
        System.arraycopy(more, 0, args, 3, more.length);
        Cli.Outcome outcome = Cli.call(args);
        assertEquals(0, outcome.status(), outcome.err());
        return outcome.json();
    }

    private static double coil(JsonNode readings, String key) {
        return readings.get("coils").get(0).get(key).doubleValue();
    }

    private static double cell(JsonNode readings, int index, String key) {
        return readings.get("cells").get(index).get(key).doubleValue();
    }

    /** 4.2 V / 1 Ω = 4.2 A; 4.2 V · 4.2 A = 17.64 W; half of 4.2 A in each cell. */
    @Test
    void sideBySide_idealPairOnOneOhm_gives17Point64Watts() {
        JsonNode readings = readings("two-side-by-side-ideal");
        assertEquals(4.2, coil(readings, "volts_V"), EXACT);
        assertEquals(4.2, coil(readings, "current_A"), EXACT);
        assertEquals(17.64, coil(readings, "power_W"), EXACT);
        assertEquals(2.1, cell(readings, 0, "current_A"), EXACT);
        assertEquals(2.1, cell(readings, 1, "current_A"), EXACT);
        assertEquals(1.0, readings.get("pack").get("efficiency").doubleValue(), EXACT);
    }

    /** 8.4 V / 4 Ω = 2.1 A; 8.4 V · 2.1 A = 17.64 W; 2.1 A in each cell. */
    @Test
    void inARow_idealPairOnFourOhm_givesTheSameWattsAndAmpsInEachCell() {
        JsonNode readings = readings("two-in-a-row-ideal");
        assertEquals(8.4, coil(readings, "volts_V"), EXACT);
        assertEquals(2.1, coil(readings, "current_A"), EXACT);
        assertEquals(17.64, coil(readings, "power_W"), EXACT);
        assertEquals(2.1, cell(readings, 0, "current_A"), EXACT);
        assertEquals(2.1, cell(readings, 1, "current_A"), EXACT);
    }

    /** 4.14 V at rest, 3.80 V at the cell and 3.38 V at the coil: 0.34 V sag, 0.42 V drop. */
    @Test
    void benchCheck_underLoad_showsSagAndDrop() {
        JsonNode readings = readings("bench-check");
        assertEquals(4.14, cell(readings, 0, "rest_V"), EXACT);
        assertEquals(3.80, cell(readings, 0, "terminal_V"), 0.005);
        assertEquals(3.80, readings.get("probes").get("volts_V").doubleValue(), 0.005);
        assertEquals(3.38, coil(readings, "volts_V"), 0.005);
        assertEquals(0.34, cell(readings, 0, "sag_V"), 0.005);
        assertEquals(0.42, readings.get("pack").get("drop_V").doubleValue(), 0.005);
        assertEquals(11.3, coil(readings, "current_A"), 0.05);
        double pathOhm = readings.get("pack").get("drop_V").doubleValue() / coil(readings, "current_A");
        assertEquals(0.037, pathOhm, 0.001);
    }

    /** Both push the same way round: 2 · 4.2 V / (2 · 22 mΩ + 2 · 2 mΩ) = 175 A. */
    @Test
    void reversedSideBySide_withTheButtonLetGo_flowsInTheRing() {
        JsonNode readings = readings("side-by-side-one-reversed", "--rest");
        double ring = 2 * 4.2 / (2 * 0.022 + 2 * 0.002);
        assertEquals(ring, cell(readings, 0, "current_A"), 1e-6);
        assertEquals(ring, cell(readings, 1, "current_A"), 1e-6);
        assertEquals(0, coil(readings, "current_A"), EXACT);
    }

    @Test
    void reversedInARowOfTwo_withTheButtonHeld_leavesNothing() {
        JsonNode readings = readings("row-of-two-one-reversed");
        assertEquals(0, coil(readings, "volts_V"), EXACT);
        assertEquals(0, coil(readings, "current_A"), EXACT);
    }

    @Test
    void reversedInARowOfThree_withTheButtonHeld_isCharged() {
        JsonNode readings = readings("row-of-three-one-reversed");
        assertTrue(cell(readings, 0, "current_A") > 0);
        assertTrue(cell(readings, 1, "current_A") < 0);
        assertTrue(cell(readings, 2, "current_A") > 0);
        assertTrue(cell(readings, 1, "terminal_V") > 4.2);
    }

    /** What a row wins over a pair side by side is the heat in wire and button, and no more. */
    @Test
    void sameWatts_realPairs_differByThePathAlone() {
        JsonNode beside = readings("two-cells-side-by-side");
        JsonNode row = readings("two-in-a-row");
        assertEquals(coil(beside, "power_W"), coil(row, "power_W"), 0.03 * coil(row, "power_W"));
        assertTrue(coil(row, "power_W") > coil(beside, "power_W"));
    }
}
