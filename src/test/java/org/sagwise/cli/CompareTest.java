package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two scenarios side by side on the command line. */
class CompareTest {

    private static final String ONE = Cli.demo("side-by-side-one-reversed");

    @TempDir
    private Path folder;

    private static final String OTHER = Cli.demo("two-cells-side-by-side");

    @Test
    void compare_theSameFileTwice_isNoDifference() {
        Cli.Outcome outcome = Cli.call("compare", ONE, ONE);
        assertEquals(0, outcome.status(), outcome.err());
        assertTrue(outcome.out().contains("it is the same circuit"), outcome.out());
    }

    @Test
    void compare_differentFiles_isStatusOneAndFitsTheColumns() {
        Cli.Outcome outcome = Cli.call("compare", ONE, OTHER);
        assertEquals(1, outcome.status(), outcome.err());
        assertTrue(outcome.out().contains("Cell B is turned round in the second"), outcome.out());
        assertTrue(outcome.out().lines().allMatch(line -> line.length() <= 72), outcome.out());
    }

    @Test
    void compare_withAPicture_drawsBothStaircasesOnOneScale() throws IOException {
        Path out = folder.resolve("both.svg");
        String series = Cli.demo("two-in-a-row-ideal");
        String parallel = Cli.demo("two-side-by-side-ideal");
        assertEquals(
                1, Cli.call("compare", parallel, series, "-o", out.toString()).status());
        String svg = Files.readString(out);
        int marks = svg.split(">8 V<", -1).length - 1;
        assertEquals(2, marks, "8 V stand on both scales");
        assertEquals(2, Cli.call("compare", parallel, series, "-o", "both.gif").status());
    }

    @Test
    void compare_json_holdsBuildAndOutcome() {
        JsonNode json = Cli.call("compare", ONE, OTHER, "--json").json();
        assertTrue(json.get("differs").booleanValue());
        assertTrue(json.findValuesAsText("kind").contains("turned"), json.toString());
        assertEquals(
                "reversed-in-parallel", json.at("/cautions_only_first/0/id").textValue());
    }

    @Test
    void compare_aFileThatIsNone_isToldInWords() {
        Cli.Outcome outcome = Cli.call("compare", ONE, "nowhere.sagwise.json");
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("There is no such file"), outcome.err());
        assertEquals(2, Cli.call("compare", ONE).status());
    }

    @Test
    void compare_standardInputWithItself_isToldInWords() {
        Cli.Outcome outcome = Cli.callWithInput("{\"sagwise\": 1}", "compare", "-", "-");
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("can be read once only"), outcome.err());
    }

    /** A run that something else than a cut-off ends has a time too: the one that {@code run} tells. */
    @Test
    void compare_runsThatEndOtherwise_tellTimeEndAndSymptomsOfBoth() {
        Cli.Outcome outcome = Cli.call("compare", Cli.demo("two-in-a-row"), Cli.demo("row-of-two-one-reversed"));
        String flat = outcome.out().replaceAll("\\s+", " ");
        assertTrue(flat.contains("First: Two cells in a row, same watts"), flat);
        assertTrue(flat.contains("The first runs for 12 h 39 min; then a cell fell to its cut-off"), flat);
        assertTrue(flat.contains("; then no current flows"), flat);
        assertTrue(flat.contains("Symptoms of the first: none"), flat);
        assertTrue(flat.contains("Symptoms of the second: nothing happens"), flat);
        String run = Cli.call("run", Cli.demo("row-of-two-one-reversed"), "--json")
                .json()
                .get("elapsed_s")
                .asText();
        JsonNode course = Cli.call("compare", Cli.demo("two-in-a-row"), Cli.demo("row-of-two-one-reversed"), "--json")
                .json()
                .at("/courses/1");
        assertEquals(run, course.get("run_time_s").asText());
    }

    @Test
    void compare_twoOfOneTitle_saysWhichPanelIsWhich() throws IOException {
        Path out = folder.resolve("two.svg");
        Cli.call("compare", ONE, ONE, "-o", out.toString());
        String svg = Files.readString(out);
        assertTrue(svg.contains(">First: Side by side") && svg.contains(">Second: Side by side"), "titles");
    }
}
