package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Varying a bench on the command line. */
class VaryTest {

    @TempDir
    private Path folder;

    private static Cli.Outcome call(String call) {
        return Cli.call(call.split(" "));
    }

    @Test
    void vary_aValue_saysTheSameAsReadings() {
        JsonNode curve =
                call("vary two-by-two --value coil.ohm --from 1 --to 2 --points 3 --reading coil.power_W --json")
                        .json();
        JsonNode readings = Cli.call("readings", "two-by-two", "--json").json();

        assertEquals(
                readings.get("coils").get(0).get("power_W").asDouble(),
                curve.get("points").get(0).get("reading").asDouble());
        assertEquals(1, curve.get("now").asDouble());
    }

    @Test
    void vary_amountsWithUnits_areReadAndRefused() {
        Cli.Outcome milliohms =
                call("vary two-by-two --value A.internal --from 0.01Ω --to 30 --points 2 --reading A.sag_V --json");
        assertEquals(10, milliohms.json().get("points").get(0).get("at").asDouble(), 1e-9);
        assertEquals(
                2,
                call("vary two-by-two --value coil.ohm --from -1 --reading A.sag_V")
                        .status());
        Cli.Outcome unknown = call("vary two-by-two --value coil.ohms --reading A.sag_V");
        assertEquals(2, unknown.status());
        assertTrue(unknown.err().contains("coil.ohm"), unknown.err());
        assertEquals(2, call("vary two-by-two --reading A.sag_V").status());
    }

    @Test
    void vary_twoValuesAndSpread_tellAndDraw() throws IOException {
        Path out = folder.resolve("field.svg");
        Cli.Outcome field = Cli.call(
                "vary",
                "two-in-a-row",
                "--value=coil.ohm",
                "--and=A.charge",
                "--reading=coil.power_W",
                "--points=4",
                "-o",
                out.toString());
        assertEquals(0, field.status(), field.err());
        assertTrue(Files.readString(out).contains("Teaching model"));
        Cli.Outcome spread = call("vary two-by-two --reading coil.power_W --spread --samples 400");
        assertTrue(spread.out().contains("What matters most is Resistance of the coil"), spread.out());
    }
}
