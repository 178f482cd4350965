package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From a meter's readings to a scenario, on the command line. */
class MeasuredTest {

    private static final String CALL = "measured --rest 4.14 --cell 3.80 --coil 3.38 --ohm 0.30";

    @TempDir
    private Path folder;

    private static Cli.Outcome call(String call) {
        return Cli.call(call.split(" "));
    }

    @Test
    void measured_benchCheck_tellsResistancesAndWhatWouldImproveThem() {
        Cli.Outcome outcome = call(CALL);
        assertEquals(0, outcome.status(), outcome.err());
        String text = outcome.out().replaceAll("\\s+", " ");
        assertTrue(text.contains("internal resistance 30.2 mΩ ± 0.93 mΩ"), text);
        assertTrue(text.contains("path: contacts, wires, switch 37.3 mΩ ± 1.05 mΩ"), text);
        assertTrue(text.contains("Read all three within the same seconds"), text);
    }

    @Test
    void measured_itsScenario_givesTheReadingsBack() {
        String out = folder.resolve("m.sagwise.json").toString();
        assertEquals(0, call(CALL + " --limit 15 --capacity 3000 -o " + out).status());
        JsonNode readings = Cli.call("readings", out, "--json").json();
        assertEquals(3.80, readings.at("/cells/0/terminal_V").doubleValue(), 1e-5);
        assertEquals(3.38, readings.at("/coils/0/volts_V").doubleValue(), 1e-5);
        assertEquals(15, readings.at("/cells/0/limit_A").doubleValue());
    }

    @Test
    void measured_json_holdsStandardUncertaintiesAndAScenario() {
        JsonNode json = call(CALL + " --json").json();
        assertEquals(0.0301775, json.get("internal_ohm").doubleValue(), 1e-6);
        assertEquals(0.01, json.get("ohm_step_ohm").doubleValue(), 1e-12);
        double twice = 2 * json.get("internal_standard_uncertainty_ohm").doubleValue();
        assertEquals(0.93e-3, twice, 0.01e-3);
        String shared = json.get("share_text").textValue();
        assertEquals(0, Cli.call("readings", shared).status());
    }

    @Test
    void measured_withUnits_takesTheStepFromTheDigits() {
        JsonNode json = Cli.call(
                        "measured", "--rest=4.140 V", "--cell=3.800V", "--coil=3380 mV", "--ohm=300 mΩ", "--json")
                .json();
        assertEquals(0.001, json.get("volts_step_V").doubleValue(), 1e-12);
        assertEquals(0.001, json.get("ohm_step_ohm").doubleValue(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--rest 3.80 --cell 4.14 --coil 3.38 --ohm 0.3 | No cell rises",
                "--rest 4.14 --cell 3.38 --coil 3.80 --ohm 0.3 | never won",
                "--rest 4.14 --cell 3.80 --coil 3.38 --ohm 0 | more than no ohms",
                "--rest 8.3 --cell 7.9 --coil 7.5 --ohm 1 | more than one cell can have",
                "--rest x --cell 3.80 --coil 3.38 --ohm 0.3 | --rest: ",
                "--rest 4.14 --cell 3.80 --coil 3.38 | Something is missing: --ohm",
                "--rest 4.14 --cell 3.80 --coil 3.38 --ohm 0.3 --limit 0 | must be above zero",
            })
    void measured_thatCannotBe_isToldInWords(String options, String words) {
        Cli.Outcome outcome = call("measured " + options);
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains(words), outcome.err());
        assertEquals("", outcome.out());
    }
}
