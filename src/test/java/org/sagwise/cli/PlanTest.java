package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Choosing a pack on the command line. */
class PlanTest {

    @TempDir
    private Path folder;

    private static Cli.Outcome call(String call) {
        return Cli.call(call.split(" "));
    }

    /** Three wishes: an evening at 40 W, the longest run in a one-cell tube, two hours on a coil of 0.3 Ω. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "plan --watts 40 --lasts 2h --cells 2 --drawer lantern-yard",
                "plan --watts 40 --lasts 4h --cells 2 --cell inr21700-4000-30A",
                "plan --watts 15 --cells 1 --format 18650 --cell inr18650-2500-20A --cell ncr18650-3500-10A",
                "plan --coil 0.3 --lasts 2h --cells 2 --cell inr18650-2500-20A",
            })
    void plan_itsBench_saysTheSameNumbers(String call) {
        String out = folder.resolve("bench.sagwise.json").toString();
        JsonNode best = call(call + " --json").json().at("/choices/0");
        assertEquals("fits", best.get("verdict").textValue());
        assertEquals(0, call(call + " -o " + out).status());

        JsonNode readings = Cli.call("readings", out, "--json").json();
        assertEquals(best.at("/full/power_W"), readings.at("/coils/0/power_W"));
        assertEquals(best.at("/full/joint_heat_W"), readings.at("/pack/path_heat_W"));
        assertEquals(best.at("/full/cell_A"), readings.at("/cells/0/current_A"));
        JsonNode run = Cli.call("run", out, "--json").json();
        assertEquals(best.at("/run/elapsed_s"), run.get("elapsed_s"));
        assertEquals(best.at("/run/presses"), run.get("presses"));
        assertEquals(best.at("/run/ended_by"), run.get("ended_by"));
        assertEquals(best.at("/cautions").size(), readings.get("cautions").size());
    }

    @Test
    void plan_forPeople_leadsWithTheAnswerAndEndsWithWhatItIsNot() {
        Cli.Outcome outcome = call("plan --watts 120 --cells 1 --cell inr18650-2500-20A");
        assertEquals(0, outcome.status(), outcome.err());
        String text = outcome.out().replaceAll("\\s+", " ");
        assertTrue(text.contains("No layout of these cells gives 120 W within their limits"), text);
        assertTrue(text.contains("over its limit"), text);
        assertTrue(text.endsWith("qualified people come first. "), text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--lasts 2h | What is wished?",
                "--coil 0.5 --regulated | A board needs watts",
                "--watts 40 --coil 0.5 | watts follow from the coil",
                "--watts 40 --cells 20 | --cells: 1 to 16",
                "--watts 40 --cell inr18650-2500-2A | inr18650-2500-20A",
                "--watts 40 --lasts 2h --presses 30 | Only one of these",
                "--watts 40 --lasts soon | --lasts: ",
                "--watts 40 --format 99999 | No cell is left",
                "--watts 9 --cells 1 --cell inr18350-1100-9A --pick 7 | there are 1 in the list",
            })
    void plan_thatCannotBe_isToldInWords(String options, String words) {
        Cli.Outcome outcome = call("plan " + options);
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains(words), outcome.err());
        assertEquals("", outcome.out());
    }
}
