package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Posts on the command line. */
class ExplainTest {

    private static final String DEMO = Cli.demo("side-by-side-one-reversed");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "markdown | md | # Side by side",
                "bbcode | bbcode | [b]Side by side",
                "text | txt | Side by side, one cell turned round",
                "html | html | <!DOCTYPE html>",
            })
    void explain_inAFormat_isTheSameByNameAndByEnding(String format, String ending, String begin) throws IOException {
        String printed = Cli.call("explain", DEMO, "--format", format).out();
        assertTrue(printed.startsWith(begin), printed);
        Path out = folder.resolve("post." + ending);
        assertEquals(0, Cli.call("explain", DEMO, "-o", out.toString()).status());
        assertEquals(printed, Files.readString(out));
    }

    @ParameterizedTest
    @CsvSource({"--short", "--format=markdown", "--format=bbcode", "--format=html"})
    void explain_withAPage_saysWhereItIsAsItIs(String option) {
        String where = "https://lantern-yard.example/two_in_a_row.html";
        String post = Cli.call("explain", DEMO, option, "--page", where).out();
        assertTrue(post.contains(where), post);
        assertFalse(Cli.call("explain", DEMO, option).out().contains("in any browser"));
    }

    /** The first thing that somebody reads must not sound like a circuit that was found sound. */
    @ParameterizedTest
    @CsvSource({"en, Nothing of it is joined yet", "de, Noch ist nichts davon verbunden"})
    void explain_partsThatNobodyJoined_saysSo(String language, String words) throws IOException {
        Path loose = Files.writeString(folder.resolve("loose.sagwise.json"), """
                {"sagwise": 1, "parts": [{"id": "A", "kind": "cell", "model": "inr18650-2500-20A", "charge": 1},
                                         {"id": "coil", "kind": "coil", "ohm": 1}], "links": []}
                """);
        String post = Cli.call("explain", loose.toString(), "--lang", language).out();
        assertTrue(post.contains(words), post);
        assertFalse(post.contains("objects to it") || post.contains("etwas dagegen"), post);
    }

    @Test
    void explain_withoutAFormat_isMarkdown() {
        assertTrue(Cli.call("explain", DEMO).out().startsWith("# "));
    }

    @Test
    void explain_asHtml_holdsBothPicturesAndNothingFromElsewhere() {
        String html = Cli.call("explain", DEMO, "--format=html").out();
        assertEquals(4, html.split("<svg ").length, "as built, corrected, and the code");
        assertFalse(html.contains("<?xml"), "no declaration inside");
        assertFalse(html.contains("<script") || html.contains("src=\""));
        assertFalse(html.contains(" id=\""), "nothing that two pictures could both be called");
        assertTrue(html.contains("QR code"));
    }

    @Test
    void explain_inGermanAndAscii_holdsNothingBeyond() {
        String post = Cli.call("explain", DEMO, "--format=text", "--ascii", "--lang=de")
                .out();
        assertTrue(post.contains("WIE GEBAUT"), post);
        assertTrue(post.chars().allMatch(sign -> sign < 0x80), post);
        assertTrue(post.lines().allMatch(line -> line.length() <= 72), post);
    }

    @Test
    void explain_soundBench_findsNothingAndPromisesNothing() {
        String post = Cli.call("explain", Cli.demo("two-cells-side-by-side")).out();
        assertTrue(post.contains("Nothing found"), post);
        assertTrue(post.contains("no clearance to build"), post);
        assertFalse(post.contains("## Corrected"), post);
    }

    @Test
    void explain_inNoFormat_isToldInWords() {
        Cli.Outcome outcome = Cli.call("explain", DEMO, "--format=word");
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("markdown, bbcode, text, html"), outcome.err());
    }

    @Test
    void explain_rowThatLooksDead_doesNotCallItWorking() {
        String post = Cli.call("explain", Cli.demo("row-of-two-one-reversed")).out();
        assertTrue(post.contains("nothing reaches the coil: Cell the wrong way round"), post);
    }

    @Test
    void explain_cureThatLeavesSomethingGrave_saysThatItIsNotEnough() {
        String unequalRows = """
                {"sagwise": 1, "parts": [
                  {"id": "A", "kind": "cell", "model": "inr18650-2500-20A", "charge": 0.5},
                  {"id": "B", "kind": "cell", "model": "inr18650-2500-20A", "charge": 0.5},
                  {"id": "C", "kind": "cell", "model": "inr18650-2500-20A", "charge": 0.5, "claimed_A": 40}],
                 "links": [
                  {"from": "A.-", "to": "B.+", "contact_mohm": 4},
                  {"from": "C.+", "to": "A.+", "contact_mohm": 4},
                  {"from": "C.-", "to": "B.-", "contact_mohm": 4}]}
                """;
        String post = Cli.callWithInput(unequalRows, "explain", "-").out();
        assertTrue(post.contains("In place of cell C, take a cell just like cell A"), post);
        assertTrue(post.contains("That is not enough."), post);
        assertTrue(post.contains("cures it: Unequal rows side by side."), post);
    }

    @Test
    void explain_atAMoment_saysWhich() {
        String post = Cli.call("explain", Cli.demo("two-in-a-row"), "--format", "text", "--at", "12min")
                .out();
        assertTrue(post.contains("12 min after the start"), post);
    }

    @Test
    void explain_howThePressesGoWithoutAMoment_isRefused() {
        Cli.Outcome answer = Cli.call("explain", Cli.demo("two-in-a-row"), "--on", "5s");
        assertEquals(2, answer.status());
        assertTrue(answer.err().contains("--at"), answer.err());
    }
}
