package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.scenario.Fault;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;

/** What people paste: whole, in pieces, clipped, spoilt, and made to do harm. */
class ShareTextTest {

    private static final ScenarioReader READER = new ScenarioReader(CatalogueLoader.builtIn());

    private static final Scenario DEMO = demo(DemoScenarios.OPENING);

    private static Scenario demo(String name) {
        return READER.read(DemoScenarios.bytes(name)).scenario().orElseThrow();
    }

    static List<String> demos() {
        return DemoScenarios.names();
    }

    /** A share text around any bytes whatever, with the checksum that belongs to them. */
    private static String around(byte[] packed) {
        CRC32 sum = new CRC32();
        sum.update(packed);
        return ShareText.BEGINNING
                + Base64.getUrlEncoder().withoutPadding().encodeToString(packed)
                + String.format(".%08x", sum.getValue());
    }

    private static Fault problem(String post) {
        List<Finding> findings = ShareText.read(post, READER).findings();
        assertEquals(1, findings.size());
        return findings.get(0).problem();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void read_shareTextOfADemo_isTheSameScenario(String name) {
        String text = ShareText.of(demo(name)).orElseThrow();
        assertEquals(demo(name), ShareText.read(text, READER).scenario().orElseThrow());
        assertTrue(text.matches("sagwise1:[A-Za-z0-9_-]+\\.[0-9a-f]{8}"), text);
        assertTrue(text.length() < 2000, "short enough for a post: " + text.length());
    }

    @Test
    void read_asAPostWrapsAndQuotesIt_isTheSameScenario() {
        String text = ShareText.of(DEMO).orElseThrow().replaceAll("(.{40})", "$1 \n\t\u00a0");
        String post = "Hello, this is my tube.\n[code]\n" + text + "[/code]\nWhat is wrong?";
        assertTrue(ShareText.isIn(post));
        assertEquals(DEMO, ShareText.read(post, READER).scenario().orElseThrow());
    }

    @Test
    void read_asMailAndForumsChangeIt_isTheSameScenario() {
        String text = ShareText.of(DEMO).orElseThrow();
        String lines = text.replaceAll("(.{60})", "$1\n");
        for (String post : List.of(
                "> " + lines.replace("\n", "\n> "),
                ">> " + lines.replace("\n", "\n> > "),
                "| " + lines.replace("\n", "\n| "),
                text.replaceAll("(.{70})", "$1=\r\n"),
                text.replaceAll("(.{70})", "$1=\n").replace(".", "=2E").replace("_", "=5F"),
                text.replaceAll("(.{40})", "$1<wbr>"),
                text.replaceAll("(.{40})", "$1&shy;<br />\n"),
                text.replaceAll("(.{50})", "$1\u2060\u200c\u200d"),
                text.replaceAll("(.{5})", "$1\u00ad\u2060\ufeff"),
                text.replace("-", "\u2013"),
                text.replace("-", "\u2212"),
                text.replace("--", "\u2014"),
                "Paste your sagwise1: line here.\n" + text,
                "I tried sagwise1:abc before, and then this:\n" + text)) {
            assertEquals(DEMO, ShareText.read(post, READER).scenario().orElseThrow(), post);
        }
    }

    /** A text in which two and three hyphens stand together, which editors make one dash of. */
    @Test
    void read_hyphensMadeOneDash_areToldApartByTheChecksum() {
        for (String name : demos()) {
            String text = ShareText.of(demo(name)).orElseThrow();
            String changed = text.replace("---", "\u2014").replace("--", "\u2013");
            assertEquals(demo(name), ShareText.read(changed, READER).scenario().orElseThrow());
        }
    }

    @Test
    void read_clippedAnywhere_isSaidToBeClipped() {
        String text = ShareText.of(DEMO).orElseThrow();
        for (int length = ShareText.BEGINNING.length(); length < text.length(); length++) {
            assertEquals(Problem.SHARE_CLIPPED, problem(text.substring(0, length)));
        }
        assertEquals(Problem.SHARE_CLIPPED, problem(text.substring(0, 300) + " ... and so on"));
    }

    @Test
    void read_oneLetterChanged_isSaidToBeDamaged() {
        String text = ShareText.of(DEMO).orElseThrow();
        for (int at = ShareText.BEGINNING.length(); at < text.length(); at += 7) {
            char old = text.charAt(at);
            boolean hasIdleBits = text.indexOf('.') - 1 == at;
            if (old == '.' || hasIdleBits) {
                continue;
            }
            char other = old == '1' ? '2' : '1';
            String changed = text.substring(0, at) + other + text.substring(at + 1);
            assertEquals(Problem.SHARE_DAMAGED, problem(changed), "letter " + at);
        }
    }

    @Test
    void read_lettersMissingInTheMiddle_isSaidToBeDamaged() {
        String text = ShareText.of(DEMO).orElseThrow();
        assertEquals(Problem.SHARE_DAMAGED, problem(text.substring(0, 100) + text.substring(104)));
    }

    @Test
    void read_bytesThatSwell_areNotUnpacked() {
        byte[] zeros = Deflated.pack(new byte[SourceText.MOST_BYTES + 1]);
        assertTrue(zeros.length < 10_000);
        assertEquals(Problem.SHARE_SWELLS, problem(around(zeros)));
    }

    @Test
    void unpack_bytesThatSwell_stopsAtTheLimit() {
        byte[] most = Deflated.pack(new byte[1000]);
        assertEquals(1000, Deflated.unpack(most, 1000).bytes().orElseThrow().length);
        assertTrue(Deflated.unpack(most, 999).isTooLarge());
        assertTrue(Deflated.unpack(most, 999).bytes().isEmpty());
    }

    @Test
    void read_atAndBeyondTheLongestLength_isJudgedAndRefused() throws Exception {
        int most = ShareText.MOST_CHARACTERS - ShareText.BEGINNING.length() - 9;
        String longest = ShareText.BEGINNING + "A".repeat(most) + ".00000000";
        assertEquals(64 * 1024, longest.length());
        assertEquals(Problem.SHARE_DAMAGED, problem(longest));
        String longer = ShareText.BEGINNING + "A".repeat(most + 1) + ".00000000";
        assertEquals(Problem.SHARE_TOO_LONG, problem(longer));
        assertEquals(Problem.SHARE_TOO_LONG, problem("sagwise1:" + "A".repeat(900_000)));
        String post = "sagwise1:" + " ".repeat(2_000_000) + "end";
        assertEquals(Problem.POST_TOO_LONG, problem(post));
        assertEquals(
                Problem.POST_TOO_LONG,
                ShareText.readFileOrPost(new ByteArrayInputStream(post.getBytes(StandardCharsets.UTF_8)), READER)
                        .findings()
                        .get(0)
                        .problem());
    }

    @Test
    void read_otherFormats_areNamed() {
        assertEquals(Problem.NEWER_FORMAT, problem("sagwise2:abc.00000000"));
        assertEquals(Problem.SHARE_UNKNOWN_FORMAT, problem("sagwise0:abc.00000000"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "hello", "sagwise", "sagwise:abc", "sagwise99999999999:abc", "{}"})
    void read_anythingElse_isNoShareText(String post) {
        assertEquals(Problem.SHARE_MISSING, problem(post));
        assertFalse(ShareText.isIn(post));
    }

    @Test
    void read_deflatedBytesThatAreNoScenario_areJudgedAsAFileWouldBe() {
        byte[] json = "{\"sagwise\":1,\"foo\":2}".getBytes(StandardCharsets.UTF_8);
        assertEquals(Problem.UNKNOWN_KEY, problem(around(Deflated.pack(json))));
        assertEquals(Problem.SHARE_DAMAGED, problem(around(json)));
        assertEquals(Problem.SHARE_DAMAGED, problem(around(new byte[0])));
    }

    @Test
    void read_bytesBehindTheEnd_areDamage() {
        byte[] packed = Deflated.pack("{\"sagwise\":1}".getBytes(StandardCharsets.UTF_8));
        assertEquals(Problem.SHARE_DAMAGED, problem(around(Arrays.copyOf(packed, packed.length + 1))));
        assertEquals(Problem.SHARE_DAMAGED, problem(around(Arrays.copyOf(packed, packed.length - 1))));
    }

    @Test
    void of_scenarioBeyondTheLimit_isEmpty() {
        StringBuilder about = new StringBuilder();
        Random random = new Random(1);
        for (int i = 0; i < 60_000; i++) {
            about.append((char) ('!' + random.nextInt(90)));
        }
        assertTrue(ShareText.of(DEMO.withAbout(about.toString())).isEmpty());
    }
}
