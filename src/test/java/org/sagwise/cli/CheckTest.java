package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckTest {

    private static final String SOUND = Cli.demo("bench-check");
    private static final String REVERSED = Cli.demo("side-by-side-one-reversed");
    private static final String MILD = Cli.demo("thin-wire");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "bench-check, 0",
        "thin-wire, 0",
        "row-of-two-one-reversed, 0",
        "too-few-ohms, 1",
        "side-by-side-one-reversed, 1"
    })
    void status_ofOneFile_followsItsGravestCaution(String demo, int status) {
        assertEquals(status, Cli.call("check", Cli.demo(demo)).status());
    }

    @Test
    void severalFiles_oneOfThemGrave_areAllToldOf() {
        Cli.Outcome outcome = Cli.call("check", SOUND, REVERSED, MILD);
        assertEquals(1, outcome.status());
        assertTrue(outcome.out().contains(SOUND + ": no caution"), outcome.out());
        assertTrue(outcome.out().contains(REVERSED + ": 1 caution"), outcome.out());
        assertTrue(outcome.out().contains(MILD + ": 1 caution"), outcome.out());
        assertEquals("", outcome.err());
    }

    @Test
    void severalFiles_oneOfThemBroken_areCheckedAllTheSame() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.sagwise.json"), "{\"sagwise\":1,");
        Cli.Outcome outcome = Cli.call("check", REVERSED, broken.toString(), SOUND);
        assertEquals(2, outcome.status());
        assertTrue(outcome.out().contains(REVERSED + ": 1 caution"));
        assertTrue(outcome.out().contains(SOUND + ": no caution"));
        assertTrue(outcome.err().contains(broken.toString()), outcome.err());
    }

    @Test
    void caution_inText_hasWordPartsNumberReasonAndAdvice() {
        String printed = Cli.call("check", REVERSED).out();
        assertTrue(printed.contains("DANGER: "), printed);
        assertTrue(printed.contains("(cell B, cell A)"), printed);
        assertTrue(printed.contains("Button let go: 175 A for a moment, limit 20 A"), printed);
        assertTrue(printed.contains("Built like this"), printed);
        assertTrue(printed.contains("What to do: Keep them apart"), printed);
        assertTrue(printed.contains("A cure, tried in this model: Turn cell B"), printed);
        assertTrue(printed.contains("never use cell A and cell B"), printed);
        assertTrue(printed.lines().allMatch(line -> line.length() <= 78), printed);
    }

    @Test
    void caution_inReadings_isToldInShort() {
        String printed = Cli.call("readings", REVERSED).out();
        assertTrue(printed.contains("DANGER: "), printed);
        assertTrue(printed.contains("sagwise check FILE"), printed);
    }

    @Test
    void caution_inGerman_hasGermanWords() {
        String printed = Cli.call("check", REVERSED, "--lang=de").out();
        assertTrue(printed.contains("GEFAHR: "), printed);
        assertTrue(printed.contains("Taster losgelassen: 175 A für einen Augenblick, Grenze 20 A"), printed);
    }

    @Test
    void caution_inJson_hasEveryKey() {
        JsonNode caution =
                Cli.call("readings", REVERSED, "--json").json().get("cautions").get(0);
        List<String> keys = new ArrayList<>();
        caution.fieldNames().forEachRemaining(keys::add);
        assertEquals(
                List.of(
                        "id",
                        "signal",
                        "parts",
                        "links",
                        "when",
                        "measured",
                        "limit",
                        "unit",
                        "basis",
                        "title",
                        "text",
                        "advice"),
                keys);
        assertEquals("reversed-in-parallel", caution.get("id").asText());
        assertEquals("DANGER", caution.get("signal").asText());
        assertEquals(175, caution.get("measured").doubleValue(), 1e-6);
        assertEquals(20, caution.get("limit").doubleValue());
        assertEquals("A", caution.get("unit").asText());
        assertEquals("B", caution.get("parts").get(0).asText());
    }

    @Test
    void numbers_ofACautionWithoutAny_areNull() {
        JsonNode files = Cli.call("check", Cli.demo("old-and-new-in-a-row"), "--json")
                .json()
                .get("files");
        JsonNode caution = files.get(0).get("cautions").get(0);
        assertTrue(caution.get("measured").isNull());
        assertTrue(caution.get("limit").isNull());
        assertEquals("", caution.get("unit").asText());
    }

    @Test
    void json_ofSeveralFiles_holdsCautionsAndProblems() {
        Cli.Outcome outcome = Cli.callWithInput("{\"sagwise\":1,\"foo\":2}", "check", REVERSED, "-", "--json");
        assertEquals(2, outcome.status());
        JsonNode files = outcome.json().get("files");
        assertEquals(2, files.size());
        assertEquals(REVERSED, files.get(0).get("file").asText());
        assertEquals(0, files.get(0).get("problems").size());
        assertEquals("-", files.get(1).get("file").asText());
        assertTrue(files.get(1).get("problems").size() >= 1);
        assertEquals("foo", files.get(1).get("problems").get(0).get("place").asText());
    }

    @Test
    void check_ofAFaultyFile_namesACureThatWasTried() {
        String file = Cli.demo("side-by-side-one-reversed");
        String text = Cli.call("check", file).out();
        assertTrue(text.contains("A cure, tried in this model: Turn cell B"), text);
        var cure = Cli.call("check", file, "--json").json().at("/files/0/cures/0");
        assertEquals("turn", cure.get("cure").textValue());
        assertEquals("reversed-in-parallel", cure.get("caution").textValue());
    }
}
