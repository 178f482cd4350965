package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LessonCommandTest {

    @Test
    void list_always_showsSixEveningsInOrder() {
        Cli.Outcome outcome = Cli.call("lesson", "list");

        assertEquals(0, outcome.status());
        assertTrue(outcome.out().contains("Evening 1 ("), outcome.out());
        assertTrue(outcome.out().contains("16-explain-a-mistake: Explain someone's mistake"));
        assertTrue(outcome.out().indexOf("01-close-the-ring") < outcome.out().indexOf("Evening 2"));
    }

    @Test
    void lint_shortName_meansTheLesson() {
        Cli.Outcome outcome = Cli.call("lesson", "lint", "06", "folders/none");

        assertEquals(2, outcome.status());
        assertEquals(
                "06-same-watts: no problems\n", Cli.call("lesson", "lint", "06").out());
    }

    @Test
    void lint_folderWithMistake_namesPlaceAndEndsWithOne(@TempDir Path folder) throws IOException {
        Path source = Path.of("lessons", "01-close-the-ring");
        Files.copy(source.resolve("start.sagwise.json"), folder.resolve("start.sagwise.json"));
        Files.writeString(
                folder.resolve("lesson.yaml"),
                Files.readString(source.resolve("lesson.yaml")).replace("is: 4.2, within: 3%}", "is: 5}"));

        Cli.Outcome outcome = Cli.call("lesson", "lint", folder.toString());

        assertEquals(1, outcome.status());
        assertTrue(
                outcome.out().contains("steps[4].until[0] (line 86, column 9): The solution does not make this true"),
                outcome.out());
    }

    @Test
    void lint_unknownName_saysSo() {
        Cli.Outcome outcome = Cli.call("lesson", "lint", "06-same-wats");

        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("06-same-watts"), outcome.err());
    }

    @Test
    void page_withoutSuchALessonOrFile_saysSo(@TempDir Path folder) {
        String out = folder.resolve("lesson.html").toString();

        Cli.Outcome unknown = Cli.call("lesson", "page", "04-side-by-sid", "-o", out);
        assertEquals(2, unknown.status());
        assertTrue(unknown.err().contains("04-side-by-side"), unknown.err());
        assertEquals(2, Cli.call("lesson", "page", "04").status());
        assertTrue(Files.notExists(Path.of(out)));
    }

    @Test
    void page_withoutAnEngine_saysSo(@TempDir Path folder) {
        assumeFalse(PageEngine.isHere(), "built with -Ppage, so that there is one");
        String out = folder.resolve("lesson.html").toString();

        Cli.Outcome bare = Cli.call("lesson", "page", "04", "-o", out);
        assertEquals(3, bare.status());
        assertTrue(bare.err().contains("page"), bare.err());
        assertTrue(Files.notExists(Path.of(out)));
    }

    @Test
    void lesson_alone_saysWhatIsMissing() {
        assertEquals(2, Cli.call("lesson").status());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{set: coil, ohm: -1}",
                "{set: coil, ohm: 1_000}",
                "{set: A, limit_A: \"x\"}",
                "join: [coil.2, A.zz]",
                "probes: [A.+, A.zz]"
            })
    void handout_moveThatCannotBeMade_isToldAsLintTellsIt(String move, @TempDir Path folder) throws IOException {
        Path source = Path.of("lessons", "01-close-the-ring");
        Files.copy(source.resolve("start.sagwise.json"), folder.resolve("start.sagwise.json"));
        String sound = Files.readString(source.resolve("lesson.yaml"));
        String solution = "    solution:\n";
        Files.writeString(
                folder.resolve("lesson.yaml"), sound.replaceFirst(solution, solution + "      - " + move + "\n"));

        Path key = folder.resolve("key.html");
        Cli.Outcome outcome = Cli.call("lesson", "handout", folder.toString(), "--key", "-o", key.toString());

        String told = "steps[4].solution[0] (line 88, column 9): This move cannot be made: ";
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains(told), outcome.err());
        assertFalse(Files.exists(key));
        assertTrue(Cli.call("lesson", "lint", folder.toString()).out().contains(told));
    }

    @Test
    void handout_toPdfAndHtml_writesBoth(@TempDir Path folder) throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        Path html = folder.resolve("key.html");

        assertEquals(
                0, Cli.call("lesson", "handout", "01", "-o", pdf.toString()).status());
        assertEquals(
                0,
                Cli.call("lesson", "handout", "01", "--key", "-o", html.toString())
                        .status());

        assertEquals("%PDF", new String(Files.readAllBytes(pdf), 0, 4, StandardCharsets.US_ASCII));
        assertTrue(Files.readString(html).contains("Idea behind it"));
    }

    @Test
    void handout_toOtherEnding_saysWhichThereAre() {
        Cli.Outcome outcome = Cli.call("lesson", "handout", "01", "-o", "sheet.doc");

        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("html, pdf"), outcome.err());
    }
}
