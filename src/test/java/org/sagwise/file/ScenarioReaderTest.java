package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.scenario.Fault;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;

class ScenarioReaderTest {

    private final ScenarioReader reader = new ScenarioReader(CatalogueLoader.builtIn());

    @TempDir
    private Path folder;

    @Test
    void read_smallestFile_isEmptyBench() {
        Scenario scenario = read("{\"sagwise\": 1}").scenario().orElseThrow();
        assertTrue(scenario.parts().isEmpty());
        assertEquals(25, scenario.ambientC());
        assertEquals("{\n  \"sagwise\": 1\n}\n", ScenarioWriter.write(scenario));
    }

    @Test
    void read_byteOrderMarkInFront_isLookedPast() {
        assertTrue(read("\ufeff{\"sagwise\": 1}").scenario().isPresent());
    }

    @Test
    void read_foreignData_keepsEveryLetterOfItsNumbers() {
        String text = "{\n  \"sagwise\": 1,\n  \"x\": {\"tool\": [1.50, 1e5, -0.0, null, {}, []]}\n}\n";
        assertEquals(text, ScenarioWriter.write(read(text).scenario().orElseThrow()));
    }

    @Test
    void read_missingFile_saysSo() {
        Loaded loaded = reader.read(folder.resolve("no.sagwise.json"));
        assertEquals(List.of(Problem.FILE_MISSING), problems(loaded));
        assertTrue(loaded.findings().get(0).text(Locale.ENGLISH).startsWith("There is no file "));
    }

    @Test
    void read_folder_saysSo() {
        assertEquals(List.of(Problem.FILE_IS_FOLDER), problems(reader.read(folder)));
    }

    @Test
    void read_fileBelowAnotherFile_saysSo() throws IOException {
        Path file = Files.writeString(folder.resolve("a"), "");
        assertEquals(List.of(Problem.FILE_UNREADABLE), problems(reader.read(file.resolve("b"))));
    }

    @Test
    void read_savedFile_isTheScenario() throws IOException {
        Path file = folder.resolve("Zwei Zellen Ω.sagwise.json");
        Files.write(file, DemoScenarios.bytes(DemoScenarios.OPENING));
        assertEquals(
                "Two cells side by side",
                reader.read(file).scenario().orElseThrow().title());
    }

    @Test
    void read_eightMebibytes_isTheMost() {
        String head = "{\"sagwise\": 1, \"x\": {\"a\": \"";
        String tail = "\"}}";
        String filling = "a".repeat(SourceText.MOST_BYTES - head.length() - tail.length());
        assertTrue(read(head + filling + tail).scenario().isPresent());
        assertEquals(List.of(Problem.TOO_LARGE), problems(read(head + filling + "a" + tail)));
    }

    @Test
    void read_tooManyPartsLinksAndNotes_saysHowMany() {
        String parts = "{\"id\": \"A\", \"kind\": \"coil\", \"ohm\": 1},".repeat(2_000) + "1";
        String links = "{\"from\": \"A.1\", \"to\": \"A.2\", \"ideal\": true},".repeat(4_000) + "1";
        String notes = "{\"on\": \"A\", \"text\": \"x\"},".repeat(200) + "1";
        Loaded loaded = read(
                "{\"sagwise\": 1, \"parts\": [" + parts + "], \"links\": [" + links + "], \"notes\": [" + notes + "]}");
        assertTrue(problems(loaded).contains(Problem.TOO_MANY_PARTS));
        assertTrue(problems(loaded).contains(Problem.TOO_MANY_LINKS));
        assertTrue(problems(loaded).contains(Problem.TOO_MANY_NOTES));
    }

    /** The worst of findings must cost neither minutes nor gigabytes. */
    @Test
    void read_floodOfFindings_isCutOff() {
        StringBuilder text = new StringBuilder("{\"sagwise\": 1, \"parts\": [");
        for (int i = 0; i < 2_000; i++) {
            text.append("{\"id\": \"a-rather-long-name-of-part-").append(i).append("\", ");
            text.append("\"kind\": \"coil\", \"ohm\": 1},");
        }
        text.setCharAt(text.length() - 1, ']');
        text.append(", \"links\": [");
        for (int i = 0; i < 4_000; i++) {
            text.append("{\"from\": \"an-other-long-name-of-part-").append(i).append(".1\", ");
            text.append("\"to\": \"nobody-knows-such-a-part-").append(i).append(".1\"},");
        }
        text.setCharAt(text.length() - 1, ']');
        List<Fault> problems = problems(read(text.append("}").toString()));
        assertEquals(ScenarioRules.MOST_FINDINGS + 1, problems.size());
        assertTrue(problems.contains(Problem.TOO_MANY_PROBLEMS));
    }

    @Test
    void read_floodOfUnknownKeys_isCutOff() {
        StringBuilder text = new StringBuilder("{\"sagwise\": 1, \"parts\": [{\"kind\": \"coil\"");
        for (int i = 0; i < 400_000; i++) {
            text.append(", \"ohm").append(i).append("\": 1");
        }
        assertCutOff(text.append("}]}").toString());
    }

    @Test
    void read_floodOfOneMistake_isCutOff() {
        String start = "{\"sagwise\": 1, ";
        assertCutOff(start + "\"a\": 1,".repeat(500_000) + "\"b\": 1}");
        String notes = start + "\"notes\": [";
        assertEquals(List.of(Problem.TOO_MANY_NOTES), problems(read(notes + "1,".repeat(1_000_000) + "1]}")));
        assertEquals(List.of(Problem.TOO_MANY_NOTES), problems(read(notes + "{},".repeat(1_000_000) + "{}]}")));
    }

    private void assertCutOff(String text) {
        List<Fault> problems = problems(read(text));
        assertEquals(ScenarioRules.MOST_FINDINGS + 1, problems.size());
        assertEquals(Problem.TOO_MANY_PROBLEMS, problems.get(0));
    }

    @Test
    void text_finding_namesPlaceLineAndColumn() {
        Loaded loaded = read("{\"sagwise\": 1,\n \"parts\": [{\"id\": \"A\", \"kind\": \"sell\"}]}");
        assertEquals(
                List.of("parts[0].kind (line 2, column 32): There is no kind of part called “sell”."
                        + " Did you mean “cell”?"),
                loaded.findings().stream()
                        .map(found -> found.text(Locale.ENGLISH))
                        .toList());
        assertEquals(
                "parts[0].kind (Zeile 2, Spalte 32): Eine Teileart „sell“ gibt es nicht." + " Meintest du „cell“?",
                loaded.findings().get(0).text(Locale.GERMAN));
    }

    private Loaded read(String text) {
        return reader.read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<Fault> problems(Loaded loaded) {
        return loaded.findings().stream().map(Finding::problem).toList();
    }
}
