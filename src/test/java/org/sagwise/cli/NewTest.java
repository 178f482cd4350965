package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A bench said in one line: made into a file, printed as a line, and taken wherever a file is. */
class NewTest {

    private static final String LINE = "2p inr18650-2500-20A at 4.15 V; coil 0.5";

    @TempDir
    private Path folder;

    @Test
    void line_withoutAFile_isPrintedAsOneAndTellsBesideWhatWasAssumed() {
        Cli.Outcome made = Cli.call("new", LINE);

        assertEquals(ExitStatus.DONE, made.status(), made.err());
        assertEquals(4, made.json().get("parts").size());
        assertTrue(made.err().startsWith("Assumed: "), made.err());
        assertTrue(made.err().contains("A sound push button."), made.err());
    }

    @Test
    void line_intoAFile_canBeReadAndSaidAgain() throws IOException {
        Path file = folder.resolve("pair.sagwise.json");
        Cli.Outcome made = Cli.call("new", LINE, "-o", file.toString());

        assertEquals(ExitStatus.DONE, made.status(), made.err());
        assertTrue(Files.readString(file).contains("`" + LINE + "`"));
        Cli.Outcome said = Cli.call("words", file.toString());
        assertEquals(
                "2p inr18650-2500-20A 4.15 V; button; coil 0.5 Ω; wire 14awg 80 mm; contacts 4 mΩ",
                said.out().strip(),
                said.err());
    }

    /** A pipe or a device gets the bytes; a file in its place would take it from everybody. */
    @ParameterizedTest
    @ValueSource(strings = {"new", "measured"})
    @DisabledOnOs(OS.WINDOWS)
    void line_intoAPipe_arrivesThereAndLeavesThePipe(String verb) throws Exception {
        Path pipe = folder.resolve("pipe");
        assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
        Path arrived = folder.resolve("arrived");
        Process reader = new ProcessBuilder("cat", pipe.toString())
                .redirectOutput(arrived.toFile())
                .start();
        String[] call = verb.equals("new")
                ? new String[] {"new", LINE, "-o", pipe.toString()}
                : ("measured --rest 4.12 --cell 3.86 --coil 3.71 --ohm 0.42 -o " + pipe).split(" ");
        try {
            Cli.Outcome made = Cli.call(call);

            assertEquals(ExitStatus.DONE, made.status(), made.err());
            assertTrue(Files.exists(pipe) && !Files.isRegularFile(pipe));
            assertTrue(reader.waitFor(10, TimeUnit.SECONDS));
            assertTrue(Files.readString(arrived).contains("\"sagwise\""));
        } finally {
            reader.destroy();
        }
    }

    @Test
    void mistake_isToldWithItsColumnAndMarked() {
        Cli.Outcome made = Cli.call("new", "2p 2500 mAh 20 A; coil 0.5 ohn");

        assertEquals(ExitStatus.WRONG, made.status());
        assertTrue(made.err().contains("Column 28: “ohn” is not a word of this line. Was “ohm” meant?"), made.err());
        assertTrue(made.err().lines().anyMatch(line -> line.endsWith("  ^^^")), made.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"readings", "run", "explain", "share", "words"})
    void line_inPlaceOfAFile_isTaken(String verb) {
        Cli.Outcome done = Cli.call(verb, "--of", LINE);

        assertEquals(ExitStatus.DONE, done.status(), done.err());
        assertTrue(!done.out().isBlank());
    }

    @Test
    void lines_checked_areCheckedEach() {
        JsonNode files = Cli.call("check", "--json", "--of", LINE, "--of", "2p 2500 mAh 20 A; B reversed; coil 1")
                .json()
                .get("files");

        assertEquals(2, files.size());
        assertEquals("DANGER", files.get(1).get("cautions").get(0).get("signal").asText());
    }

    @Test
    void lineAndFile_compared_areInTheOrderOfTheCall() {
        String first = Cli.call("compare", "--json", "--of", "1s 2500 mAh 20 A; coil 4", "two-in-a-row")
                .json()
                .get("first")
                .asText();
        String second = Cli.call("compare", "--json", "two-in-a-row", "--of", "1s 2500 mAh 20 A; coil 4")
                .json()
                .get("second")
                .asText();

        assertEquals("One cell on 4.00 Ω", first);
        assertEquals("One cell on 4.00 Ω", second);
    }

    @Test
    void lineAndFile_ofOneBench_areOneTooMany() {
        Cli.Outcome both = Cli.call("readings", "two-in-a-row", "--of", LINE);

        assertEquals(ExitStatus.WRONG, both.status());
        assertTrue(both.err().contains("FILE, --of"), both.err());
    }
}
