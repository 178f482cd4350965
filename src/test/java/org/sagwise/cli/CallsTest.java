package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Exit statuses, and words for everything that can be wrong with a call or its input. */
class CallsTest {

    private static final String EMPTY_BENCH = "{\"sagwise\":1,\"parts\":[],\"links\":[]}";

    @TempDir
    private Path folder;

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("given.sagwise.json"), bytes);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "readings --help", "check --help", "parts --help", "open -h"})
    void help_ofEveryVerb_isPrinted(String call) {
        Cli.Outcome outcome = Cli.call(call.split(" "));
        assertEquals(0, outcome.status());
        assertTrue(outcome.out().contains("Usage: sagwise"));
        assertEquals("", outcome.err());
    }

    @Test
    void help_ofTheProgram_listsTheVerbsThatAreThere() {
        String help = Cli.call("--help").out();
        for (String verb : new String[] {
            "open", "readings", "check", "run", "picture", "explain", "share", "unshare", "lesson", "parts"
        }) {
            assertTrue(help.contains("\n  " + verb + " "), verb);
        }
    }

    @Test
    void version_isPrinted() {
        assertTrue(Cli.call("--version").out().startsWith("Sagwise"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "readings | Something is missing: FILE.",
                "check | Something is missing: FILE.",
                "readings a b | is too much here",
                "readings --bogus a | There is no option --bogus here.",
                "readings --fired --rest a | Only one of these can be asked for",
                "readngs | Did you mean the verb \"readings\"?",
                "readngs a | Did you mean the verb \"readings\"?",
                "chekc a b | Did you mean the verb \"check\"?",
                "--lang=fr readings a | --lang cannot be \"fr\"; it can be: en, de.",
                "nowhere.sagwise.json | nowhere.sagwise.json: There is no such file.",
                "readings nowhere.sagwise.json | nowhere.sagwise.json: There is no such file.",
                "open nowhere.sagwise.json | There is no such file.",
                "parts inr18650-2500-20B | Did you mean: inr18650-2500-20A",
            })
    void wrongCall_isToldInWords(String call, String words) {
        Cli.Outcome outcome = Cli.call(call.split(" "));
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains(words), outcome.err());
        assertEquals("", outcome.out());
        assertFalse(outcome.err().contains("Exception"), outcome.err());
    }

    @Test
    void readings_ofAFolder_areRefused() {
        Cli.Outcome outcome = Cli.call("readings", folder.toString());
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("This is a folder"), outcome.err());
    }

    @Test
    void readings_ofABinaryFile_areRefused() throws IOException {
        byte[] bytes = new byte[100_000];
        new Random(1).nextBytes(bytes);
        Cli.Outcome outcome = Cli.call("readings", file(bytes).toString());
        assertEquals(2, outcome.status());
        assertFalse(outcome.err().isBlank());
    }

    @Test
    void readings_ofAHugeFile_areRefused() throws IOException {
        byte[] bytes = new byte[9 << 20];
        Arrays.fill(bytes, (byte) ' ');
        Cli.Outcome outcome = Cli.call("readings", file(bytes).toString());
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("8 MiB"), outcome.err());
    }

    @Test
    void readings_ofAnEmptyFile_areRefused() throws IOException {
        assertEquals(2, Cli.call("readings", file(new byte[0]).toString()).status());
    }

    @Test
    void readings_ofSeveralProblems_tellThemAllWithTheirPlaces() {
        String broken = """
                {"sagwise": 1,
                 "parts": [{"id": "A", "kind": "cel"}, {"id": "coil", "kind": "coil", "ohm": -1}],
                 "links": [{"from": "A.+", "to": "nowhere.1", "ideal": true}],
                 "foo": 1}
                """;
        Cli.Outcome outcome = Cli.callWithInput(broken, "readings", "-");
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().startsWith("standard input: 4 problems"), outcome.err());
        for (String place : new String[] {"parts[0].kind", "parts[1].ohm", "links[0].to", "foo"}) {
            assertTrue(outcome.err().contains(place), place);
        }
    }

    /** The catalogue's coil of 0.25 ohms and its worn button of 20 mohm; what a part says itself holds. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"model\": \"coil-0.25ohm-80W\" | 0.25",
                "\"model\": \"coil-0.25ohm-80W\", \"ohm\": 0.3 | 0.3",
            })
    void readings_ofCoilAndSwitchByModel_takeTheCataloguesNumbers(String coil, double ohm) {
        String bench = """
                {"sagwise": 1, "parts": [
                  {"id": "A", "kind": "cell", "model": "inr18650-2500-20A", "charge": 1},
                  {"id": "fire", "kind": "switch", "model": "button-worn"},
                  {"id": "coil", "kind": "coil", COIL}],
                 "links": [
                  {"from": "A.+", "to": "fire.1", "ideal": true},
                  {"from": "fire.2", "to": "coil.1", "ideal": true},
                  {"from": "coil.2", "to": "A.-", "ideal": true}]}
                """.replace("COIL", coil);
        var json = Cli.callWithInput(bench, "readings", "-", "--json").json();
        assertEquals(ohm, json.at("/coils/0/ohm").doubleValue(), 1e-12);
        double amps = json.at("/cells/0/current_A").doubleValue();
        assertEquals(0.020, json.at("/parts/0/volts_V").doubleValue() / amps, 1e-9);
    }

    @Test
    void readings_ofAModelOfAnotherKind_sayOfWhichItIs() {
        String bench = "{\"sagwise\": 1, \"parts\": [{\"id\": \"A\", \"kind\": \"switch\", \"model\": \"fuse-5A\"}]}";
        Cli.Outcome outcome = Cli.callWithInput(bench, "readings", "-");
        assertTrue(outcome.err().contains("“fuse-5A” is a model of the kind “fuse”"), outcome.err());
        assertTrue(outcome.err().contains("button-worn"), outcome.err());
    }

    @Test
    void readings_ofStandardInput_areThoseOfTheFile() throws IOException {
        String demo = Cli.demo("bench-check");
        String text = Files.readString(Path.of(demo));
        assertEquals(
                Cli.call("readings", demo).out(),
                Cli.callWithInput(text, "readings", "-").out());
    }

    @Test
    void readings_ofAnEmptyBench_areNoError() {
        Cli.Outcome outcome = Cli.callWithInput(EMPTY_BENCH, "readings", "-");
        assertEquals(0, outcome.status());
        assertTrue(outcome.out().contains("No current flows"));
    }

    @Test
    void readings_ofAStreamThatBreaks_areToldInWords() {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("cable pulled");
            }
        };
        Cli.Outcome outcome = Cli.call(broken, new Cli.NoWindow(), "readings", "-");
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("Reading failed: cable pulled"), outcome.err());
    }

    @Test
    void fault_ofTheProgram_isOwnedUpTo() {
        InputStream faulty = new ByteArrayInputStream(EMPTY_BENCH.getBytes(StandardCharsets.UTF_8)) {
            @Override
            public synchronized int read(byte[] buffer, int from, int length) {
                throw new IllegalStateException("planted");
            }
        };
        Cli.Outcome plain = Cli.call(faulty, new Cli.NoWindow(), "readings", "-");
        assertEquals(3, plain.status());
        assertTrue(plain.err().contains("planted"), plain.err());
        assertTrue(plain.err().contains("--trace"));
        assertFalse(plain.err().contains("\tat "));

        Cli.Outcome traced = Cli.call(faulty, new Cli.NoWindow(), "readings", "-", "--trace");
        assertEquals(3, traced.status());
        assertTrue(traced.err().contains("\tat "));
    }
}
