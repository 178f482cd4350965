package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Winding a coil on the command line. */
class WindTest {

    @TempDir
    private Path folder;

    private static Cli.Outcome call(String call) {
        return Cli.call(call.split(" "));
    }

    @Test
    void wind_wantedOhms_tellsWholeWrapsAndThoseBeside() {
        Cli.Outcome outcome = call("wind --ohm 0.5 --alloy nicr-80-20 --awg 26 --legs 12");
        assertEquals(0, outcome.status(), outcome.err());
        String text = outcome.out().replaceAll("\\s+", " ");
        assertTrue(text.contains("would be just 4.45 wraps"), text);
        assertTrue(text.contains("no clearance to build"), text);
    }

    /** As on the bench: the same keys give the same ohms there. */
    @Test
    void wind_givenWraps_hasTheOhmsOfTheBench() {
        JsonNode wound = call("wind --wraps 8 --awg 24 --legs 10 --json").json();
        JsonNode bench = Cli.call(
                        "readings",
                        "--json",
                        "--of",
                        "inr18650-2500-20A; coil fecral-25-5 24awg 8 wraps on 3 mm legs 10 mm")
                .json();
        assertEquals(bench.at("/coils/0/ohm").doubleValue(), wound.get("ohm").doubleValue(), 1e-12);
    }

    @Test
    void wind_thereAndBack_areTheSameWraps() {
        double ohm = call("wind --wraps 7 --awg 28 --strands 2 --json")
                .json()
                .get("ohm")
                .doubleValue();
        JsonNode back =
                call("wind --ohm " + ohm + " --awg 28 --strands 2 --json").json();
        assertEquals(7, back.get("wraps").doubleValue());
        assertEquals(7, back.get("exact_wraps").doubleValue(), 1e-9);
    }

    @Test
    void wind_toPicture_drawsIt() throws IOException {
        Path out = folder.resolve("coil.svg");
        assertEquals(
                0,
                Cli.call("wind", "--watts=30", "--awg=26", "-o", out.toString()).status());
        assertTrue(Files.readString(out).contains("to scale"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--ohm 0.01 --awg 30 | No coil of 10 mΩ",
                "--ohm 0.5 | Something is missing",
                "--awg 26 | Something is missing",
                "--ohm 0 --awg 26 | must be above zero",
                "--ohm 0.5 --awg 99 | --awg 0 to 50",
                "--ohm 0.5 --awg 26 --legs -1 | must not be below zero",
                "--ohm 0.5 --awg 26 --alloy nicr-80 | nicr-80-20",
                "--ohm 0.5 --awg 26 -o coil.gif | coil.gif",
                "--wraps 5000 --awg 26 | 1,000 are the most",
            })
    void wind_thatCannotBe_isToldInWords(String options, String words) {
        Cli.Outcome outcome = call("wind " + options);
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains(words), outcome.err());
        assertEquals("", outcome.out());
    }
}
