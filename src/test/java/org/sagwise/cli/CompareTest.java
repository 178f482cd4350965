package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;

/** Two scenarios side by side on the command line. */
class CompareTest {

    private static final String ONE = Cli.demo("side-by-side-one-reversed");
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
    void compare_json_holdsBuildAndOutcome() {
        JsonNode json = Cli.call("compare", ONE, OTHER, "--json").json();
        assertTrue(json.get("differs").booleanValue());
        assertTrue(json.findValuesAsText("kind").contains("turned"), json.toString());
        assertEquals("reversed-in-parallel", json.at("/cautions_only_first/0/id").textValue());
    }

    @Test
    void compare_aFileThatIsNone_isToldInWords() {
        Cli.Outcome outcome = Cli.call("compare", ONE, "nowhere.sagwise.json");
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("There is no such file"), outcome.err());
        assertEquals(2, Cli.call("compare", ONE).status());
    }
}
