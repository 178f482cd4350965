package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The verb that simulates in time: its stories, its JSON, its table, its refusals. */
class RunTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private static JsonNode json(String demo, String... more) throws IOException {
        String[] args = new String[more.length + 3];
        args[0] = "run";
        args[1] = Cli.demo(demo);
        args[2] = "--json";
        System.arraycopy(more, 0, args, 3, more.length);
        Cli.Outcome outcome = Cli.call(args);
        assertEquals(0, outcome.status(), outcome.err());
        assertEquals("", outcome.err());
        return JSON.readTree(outcome.out());
    }

    @Test
    void json_anyRun_hasTheKeysOthersRelyOn() throws IOException {
        JsonNode run = json("two-cells-side-by-side");
        assertEquals("cutoff", run.get("ended_by").asText());
        assertTrue(run.get("fired_s").isDouble());
        assertTrue(run.get("elapsed_s").isDouble());
        assertTrue(run.get("presses").isInt());
        assertTrue(run.get("delivered_Wh").isDouble());
        for (JsonNode cell : run.get("cells")) {
            assertTrue(cell.get("id").isTextual());
            for (String key : List.of(
                    "charge",
                    "rest_V",
                    "temperature_C",
                    "peak_temperature_C",
                    "peak_current_A",
                    "minimum_terminal_V")) {
                assertTrue(cell.get(key).isNumber(), key);
            }
        }
        for (JsonNode event : run.get("events")) {
            assertTrue(event.get("at_s").isNumber());
            assertTrue(event.get("part").isTextual());
            assertTrue(event.get("event").isTextual());
            assertTrue(event.get("text").isTextual());
            assertTrue(List.of("published", "typical", "teaching")
                    .contains(event.get("basis").asText()));
        }
    }

    /** Real cells do not keep such a current up; the model does, and says so at the number. */
    @Test
    void json_sideBySideOneReversed_saysWhatItsNumbersRestOn() throws IOException {
        JsonNode run = json("side-by-side-one-reversed");

        assertEquals(
                "teaching", run.get("cells").get(0).get("peak_current_basis").asText());
        assertEquals(
                "teaching",
                run.get("outlook").get(0).get("stages").get(0).get("basis").asText());
        assertEquals(
                "typical",
                json("two-cells-side-by-side")
                        .get("cells")
                        .get(0)
                        .get("peak_current_basis")
                        .asText());
    }

    @Test
    void json_twoIdealPairsAtEqualWatts_lastEquallyLong() throws IOException {
        JsonNode sideBySide = json("two-side-by-side-ideal");
        JsonNode inARow = json("two-in-a-row-ideal");
        assertEquals(inARow.get("fired_s").asDouble(), sideBySide.get("fired_s").asDouble(), 0.002);
        assertEquals(inARow.get("presses").asInt(), sideBySide.get("presses").asInt());
    }

    @Test
    void text_oldAndNewInARow_namesTheCellThatStopsIt() {
        String text = Cli.call("run", Cli.demo("old-and-new-in-a-row")).out();
        assertTrue(text.contains("Old cell falls to its cut-off under load"), text);
        assertFalse(text.contains("New cell falls"), text);
    }

    @Test
    void text_oldAndNewInARowPressedOn_tellsOfReversalAndCopper() {
        String text = Cli.call("run", Cli.demo("old-and-new-in-a-row"), "--until", "10 h")
                .out();
        assertTrue(text.contains("Old cell is driven below zero by the others"), text);
        assertTrue(text.contains("copper dissolves inside it"), text);
    }

    @Test
    void text_reversedSideBySide_givesBandsAndSaysWhatToDo() {
        String text = Cli.call("run", Cli.demo("side-by-side-one-reversed")).out();
        assertTrue(text.contains("with the button let go"), text);
        assertTrue(text.contains("vent may open"), text);
        assertTrue(text.contains("stand back, do not touch the cells"), text);
        assertTrue(text.contains("call the fire brigade"), text);
        assertTrue(text.contains("no promise"), text);
    }

    @Test
    void text_inGerman_isGerman() {
        String text = Cli.call("run", Cli.demo("side-by-side-one-reversed"), "--lang=de")
                .out();
        assertTrue(text.contains("Abstand halten"), text);
        assertTrue(text.contains("Der Lauf endete"), text);
    }

    @Test
    void csv_ofARun_hasARowForEachMoment() throws IOException {
        Path out = folder.resolve("run.csv");
        Cli.Outcome outcome = Cli.call("run", Cli.demo("two-cells-side-by-side"), "--until=2min", "--csv=" + out);
        assertEquals(0, outcome.status(), outcome.err());
        List<String> rows = Files.readAllLines(out);
        assertTrue(rows.get(0).startsWith("time_s,fired,A_rest_V,A_terminal_V,A_current_A"));
        int columns = rows.get(0).split(",", -1).length;
        for (String row : rows) {
            assertEquals(columns, row.split(",", -1).length);
        }
        assertTrue(rows.get(rows.size() - 1).startsWith("120.0,0,"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--on=soon | --on: ",
                "--on=-3s | --on: ",
                "--on=0s | --on: a press must last longer",
                "--until=maybe | --until: ",
                "--until=0s | --until: it must be longer",
                "--until=9999999h | --until: it must be longer than no time at all and at most",
                "--hold --on=3s | --hold: it cannot stand beside",
                "--cutoff=warm | --cutoff: ",
                "--cycles=-1 | --cycles: it must be from 1 to",
                "--csv=- --json | Only one of these can be asked for: --csv -, --json",
                "--cycles=99 --until=1h | --cycles: it tells of whole run-downs",
            })
    void wrongCall_isToldInWords(String options, String words) {
        String[] given = options.split(" ");
        String[] args = new String[given.length + 2];
        args[0] = "run";
        args[1] = Cli.demo("two-cells-side-by-side");
        System.arraycopy(given, 0, args, 2, given.length);
        Cli.Outcome outcome = Cli.call(args);
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains(words), outcome.err());
        assertEquals("", outcome.out());
    }

    @Test
    void csv_whereNothingCanBeWritten_isToldInWords() {
        Cli.Outcome outcome = Cli.call(
                "run",
                Cli.demo("two-cells-side-by-side"),
                "--until=1min",
                "--csv=" + folder.resolve("no").resolve("where.csv"));
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("There is no folder"), outcome.err());
    }

    @Test
    void csv_toStandardOutput_standsAlone() {
        Cli.Outcome outcome = Cli.call("run", Cli.demo("two-cells-side-by-side"), "--until=6s", "--csv=-");
        assertEquals(0, outcome.status(), outcome.err());
        assertTrue(outcome.out().startsWith("time_s,fired,"), outcome.out());
        assertTrue(outcome.out().stripTrailing().lines().allMatch(row -> row.contains(",")));
        assertFalse(outcome.out().contains("teaching model"), outcome.out());
    }

    @Test
    void progress_whereNobodyWatches_isSilent() throws IOException {
        Cli.Outcome outcome = Cli.call("run", Cli.demo("two-by-two"));
        assertEquals(0, outcome.status());
        assertEquals("", outcome.err());
    }

    @Test
    void cycles_oldAndNewInARow_showsThemDriftingApart() throws IOException {
        JsonNode life = json("old-and-new-in-a-row", "--cycles=100").get("life");
        assertEquals(11, life.size());
        JsonNode last = life.get(10);
        assertEquals(100, last.get("cycles").asInt());
        double before = healthApart(life.get(0));
        assertTrue(healthApart(last) > before, healthApart(last) + " after " + before);
        String text = Cli.call("run", Cli.demo("old-and-new-in-a-row"), "--cycles=100")
                .out();
        assertTrue(text.contains("A teaching model of ageing, no forecast."), text);
    }

    private static double healthApart(JsonNode age) {
        JsonNode cells = age.get("cells");
        return Math.abs(cells.get(0).get("health").asDouble()
                - cells.get(1).get("health").asDouble());
    }
}
