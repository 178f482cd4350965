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
}
