package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.report.HtmlCheck;
import org.sagwise.scenario.Scenario;
import org.sagwise.words.TradeWords;

/** What the writer puts into a page, with a stand-in for the engine; browsers open real ones in the tests under {@code -Ppage}. */
class PageWriterTest {

    static final byte[] ENGINE =
            "var main=function(){var r={\"org/sagwise/texts/languages.txt\":\"YQ==\"\n+\"YQ==\"};return r};"
                    .getBytes(StandardCharsets.UTF_8);

    static final String HOSTILE =
            "</script><script>window.ran=1</script><!--<img src=x onerror='window.ran=1'>{{engine}}${x}\\u003c";

    static Scenario read(String json) {
        return ScenarioReader.bare(CatalogueLoader.builtIn())
                .read(json.getBytes(StandardCharsets.UTF_8))
                .scenario()
                .orElseThrow();
    }

    private static Scenario demo(String name) {
        return new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes(name, Locale.ENGLISH))
                .scenario()
                .orElseThrow();
    }

    private static String page(Scenario scenario, Locale locale) {
        return new PageWriter(ENGINE, locale).write(scenario);
    }

    /** Where a finding begins and ends: it may begin with the end of the line before. */
    private static final Pattern LINES = Pattern.compile("(\\d+)\\.\\d+: .*");

    /**
     * The checker takes blocks of data for scripts that the policy forbids; they are none, and never run.
     */
    static List<String> findings(String page) {
        List<String> lines = page.lines().toList();
        return HtmlCheck.findings(page).stream()
                .filter(it -> !it.contains("Inline script violates") || !isOfData(it, lines))
                .toList();
    }

    private static boolean isOfData(String finding, List<String> lines) {
        Matcher at = LINES.matcher(finding);
        return at.matches() && lines.get(Integer.parseInt(at.group(1)) - 1).startsWith("<script type=\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void write_aDemo_passesTheHtmlChecker(String language) {
        String page = page(demo("side-by-side-one-reversed"), Locale.forLanguageTag(language));

        assertEquals(List.of(), findings(page));
    }

    @Test
    void pages_theSitesIndex_passesTheHtmlChecker() {
        Map.Entry<String, String> index =
                SiteWriter.pages(ENGINE, Locale.ENGLISH).iterator().next();

        assertEquals("index.html", index.getKey());
        assertEquals(List.of(), findings(index.getValue()));
    }

    @Test
    void write_hostileTexts_standAsTextAlone() {
        String hostile = HOSTILE.replace("\\", "\\\\");
        String page = page(
                read("{\"sagwise\":1,\"title\":\"T" + hostile + "\",\"about\":\"" + hostile
                        + "\",\"parts\":[{\"id\":\"A\",\"kind\":\"cell\",\"label\":\"" + hostile.substring(0, 50)
                        + "\",\"model\":\"inr18650-2500-20A\",\"charge\":1}],\"links\":[],\"notes\":[{\"on\":\"A\",\"text\":\""
                        + hostile + "\"}],\"x\":{\"" + hostile + "\":\"" + hostile + "\"}}"),
                Locale.ENGLISH);

        assertFalse(page.contains("<script>window"));
        assertFalse(page.contains("<img"));
        assertEquals(4, page.split("</script>", -1).length - 1);
        assertEquals(1, page.split("<!--|<!DOCTYPE", -1).length - 1);
        assertEquals(List.of(), findings(page));
        Matcher json = Pattern.compile("id=\"scenario\">(.*?)</script>", Pattern.DOTALL)
                .matcher(page);
        assertTrue(json.find());
        assertTrue(read(json.group(1)).title().endsWith(HOSTILE));
    }

    @Test
    void write_itsPolicy_allowsNothingButItsOwnScriptsAndStyle() throws Exception {
        String page = page(demo("two-in-a-row"), Locale.ENGLISH);
        String policy = page.replaceFirst("(?s).*Content-Security-Policy\" content=\"(.*?)\">.*", "$1");

        assertTrue(policy.startsWith("default-src 'none';"), policy);
        assertFalse(policy.contains("unsafe"), policy);
        assertFalse(policy.contains("http"), policy);
        assertTrue(policy.contains(hash(between(page, "<style>", "</style>"))), policy);
        assertTrue(policy.contains(hash(between(page, "<script>", "</script>"))), policy);
    }

    private static String between(String page, String begin, String end) {
        int from = page.indexOf(begin) + begin.length();
        return page.substring(from, page.indexOf(end, from));
    }

    private static String hash(String text) throws Exception {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    }

    /** What cannot be read and touched where all is seen at once is drawn larger, and the sheet is scrolled. */
    @Test
    void write_manyParts_makesTheSheetWider() {
        int few = sheetPx(page(demo("two-cells-side-by-side"), Locale.ENGLISH));
        int more = sheetPx(page(
                TradeWords.read("6s4p 2500 mAh 20 A; coil 3", CatalogueLoader.builtIn(), Locale.ENGLISH)
                        .scenario()
                        .orElseThrow(),
                Locale.ENGLISH));

        assertTrue(few < 390, few + " px");
        assertTrue(more > 390, more + " px");
    }

    private static int sheetPx(String page) {
        return Integer.parseInt(between(page, "\n#sheet { min-width: ", "px"));
    }

    @Test
    void of_aScriptWithoutFiles_isRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> EngineScript.of("var main".getBytes(StandardCharsets.UTF_8), false));
    }

    @Test
    void pages_ofASite_areAllDemosAndAnIndex() {
        long pages = StreamSupport.stream(
                        SiteWriter.pages(ENGINE, Locale.GERMAN).spliterator(), false)
                .limit(3)
                .filter(page -> page.getValue().contains("<html lang=\"de\">"))
                .count();

        assertEquals(3, pages);
    }

    /** Read back as the loader of the page reads it. */
    @Test
    void base85_ofBytesOfAnyLength_readsBack() {
        for (int length = 0; length < 40; length++) {
            byte[] bytes = new byte[length];
            new Random(length).nextBytes(bytes);
            String letters = Base85.of(bytes);
            byte[] back = new byte[(letters.length() + 4) / 5 * 4];
            for (int at = 0; at < letters.length(); at += 5) {
                long group = 0;
                for (int i = at; i < at + 5; i++) {
                    group = group * 85 + (i < letters.length() ? Base85.LETTERS.indexOf(letters.charAt(i)) : 84);
                }
                for (int i = 3; i >= 0; i--) {
                    back[at / 5 * 4 + i] = (byte) group;
                    group >>= 8;
                }
            }
            assertArrayEquals(bytes, Arrays.copyOf(back, length));
        }
        assertEquals(85, Base85.LETTERS.length());
    }
}
