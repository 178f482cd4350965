package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.RandomScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.part.Catalogue;
import org.sagwise.reading.MeterTexts;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.SetProbes;
import org.sagwise.web.engine.Answers;
import org.sagwise.words.TradeWords;

/**
 * Live pages in a real browser: safe, the same numbers as on a JVM, and a stranger's way through one. Run by
 * {@code mvn -Ppage verify}, which compiles the engine; skipped where there is none, or no browser.
 */
@Tag("browser")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class InBrowserTest {

    private static final double RELATIVE = 1e-9;

    /** What is next to nothing, in volts, amps, watts and ohms. */
    private static final double ABSOLUTE = 1e-9;

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /** Pictures are written with two decimals. */
    private static final double LAST_DIGIT = 0.0101;

    private static final int RANDOM_BENCHES = Integer.getInteger("sagwise.page.benches", 500);
    private static final int MOST_BYTES = 1_000_000;

    /** Of the demos, each how many-eth the checkers of accessibility and HTML look at. */
    static final int EVERY = Integer.getInteger("sagwise.page.every", 1);

    private static final String HOSTILE =
            "</script><script>window.ran=1</script><img src=http://127.0.0.1:9/x onerror='window.ran=1'><svg onload=window.ran=1>";

    private final Browser.Kind kind;
    private final int width;
    private final int height;
    private final String pointer;

    private Path folder;

    private Browser browser;
    private PageWriter writer;
    private byte[] engine;

    InBrowserTest(Browser.Kind kind, int width, int height, String pointer) {
        this.kind = kind;
        this.width = width;
        this.height = height;
        this.pointer = pointer;
    }

    @BeforeAll
    void open(@TempDir(cleanup = CleanupMode.NEVER) Path empty) throws IOException {
        folder = empty;
        engine = Engine.compiled();
        assumeTrue(kind.isHere(), kind + " is not installed");
        writer = new PageWriter(engine, Locale.ENGLISH);
        browser = Browser.open(kind, folder.resolve("browser"), width, height, pointer.equals("touch"));
    }

    @AfterAll
    void close() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    private static Scenario demo(String name) {
        return new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes(name, Locale.ENGLISH))
                .scenario()
                .orElseThrow();
    }

    private void show(String name, Scenario scenario) throws IOException {
        String page = writer.write(scenario);
        assertTrue(page.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES, name + " is too large");
        Path file = Files.writeString(folder.resolve(name + ".html"), page);
        browser.go(file.toUri().toString());
        browser.await("document.documentElement.className === 'live alive' && window.sagwise");
    }

    private String hidden(String id) throws IOException {
        return browser.run("return String(document.getElementById(arguments[0]).hidden);", id)
                .asText();
    }

    @Test
    void stranger_findsTheReversedCell_turnsItAndReadsTheWatts() throws IOException {
        show(
                "journey",
                TradeWords.read("2p 2500 mAh 20 A; B reversed; coil 0.5", CatalogueLoader.builtIn(), Locale.ENGLISH)
                        .scenario()
                        .orElseThrow());
        assertTrue(browser.text("verdict").startsWith("DANGER"), browser.text("verdict"));
        assertEquals("0.00 W", browser.text("watts").replace('\u202f', ' ').replace('\u00a0', ' '));

        browser.tap(pointer, "part-B");
        assertEquals("false", hidden("card-part"));
        browser.tap(pointer, "flip");
        browser.await("document.getElementById('verdict').className === 'none'"
                + " || !document.getElementById('verdict').innerText.startsWith('DANGER')");
        browser.holdUntil(pointer, "fire", "parseFloat(document.getElementById('watts').innerText) > 10");
        browser.await("parseFloat(document.getElementById('watts').innerText) === 0");

        browser.tap(pointer, "undo");
        browser.await("document.getElementById('verdict').innerText.startsWith('DANGER')");
        assertEquals(List.of(), browser.requests());
    }

    @Test
    void reader_touchesTwoEnds_cutsAndJoinsThem() throws IOException {
        show("ends", demo("two-in-a-row-ideal"));
        browser.unfold("joints-part", "#joints > li");
        int joints = joints();
        String[] between = browser.run("var s = JSON.parse(document.getElementById('scenario').textContent).links[0];"
                        + " return s.from + ' ' + s.to;")
                .asText()
                .split(" ");
        browser.tap(pointer, "joining");
        browser.tap(pointer, "end-" + between[0]);
        assertEquals(
                "true",
                browser.run(
                                "return document.getElementById(arguments[0]).getAttribute('aria-pressed');",
                                "end-" + between[0])
                        .asText());
        browser.tap(pointer, "end-" + between[1]);
        assertEquals(joints - 1, joints(), browser.text("joining-said"));
        assertTrue(browser.text("joining-said").startsWith("Cut: "), browser.text("joining-said"));

        browser.run("document.getElementById(arguments[0]).focus();", "end-" + between[1]);
        browser.keys("\uE007");
        browser.run("document.getElementById(arguments[0]).focus();", "end-" + between[0]);
        browser.keys("\uE007");
        assertEquals(joints, joints(), browser.text("joining-said"));
        assertTrue(browser.text("joining-said").startsWith("Joined: "), browser.text("joining-said"));
        browser.tap(pointer, "joining");
        browser.tap(pointer, "part-A");
        assertEquals("false", hidden("card-part"));
    }

    private int joints() throws IOException {
        return browser.run("return document.querySelectorAll('#joints > li').length;")
                .asInt();
    }

    /** Where the probes rest is chosen in lists, which a phone opens by touch. */
    @Test
    void meter_putOnTwoEnds_readsWhatTheJvmReads() throws IOException {
        Scenario bench = demo("two-in-a-row");
        show("meter", bench);
        browser.unfold("meter-part", "#probe-red > option");
        browser.run("['red:A.+', 'black:A.-'].forEach(function (it) { var field ="
                + " document.getElementById('probe-' + it.split(':')[0]); field.value = it.split(':')[1];"
                + " field.dispatchEvent(new Event('change')); });");
        Probes probes = Probes.of(
                TerminalRef.parse("A.+").orElseThrow(), TerminalRef.parse("A.-").orElseThrow());
        String due = MeterTexts.in(Locale.ENGLISH)
                .figure(Assessment.of(new SetProbes(Optional.of(probes)).apply(bench), CatalogueLoader.builtIn())
                        .with(Press.RELEASED)
                        .readings()
                        .probes()
                        .orElseThrow()
                        .display());
        browser.await("document.getElementById('meter-figure').textContent.length > 2");
        assertEquals(due, browser.text("meter-figure"));
        browser.tap(pointer, "meter-away");
        browser.await("document.getElementById('meter-figure').textContent === '–'");
    }

    /** Frames are counted and not timed: a page that computes at a stretch is done before the next one. */
    @Test
    void runDown_ofManyCells_letsThePageGoOnAndCanBeStopped() throws IOException {
        show("many", demo("two-by-two"));
        browser.run("window.stopped = ''; var frames = 0; var button = document.getElementById('run-down');"
                + " button.click(); (function next() { if (++frames < 3) { requestAnimationFrame(next); }"
                + " else { window.stopped = button.innerText; button.click(); } })();");
        browser.await("window.stopped");
        assertEquals("Stop here", browser.run("return window.stopped;").asText());
        browser.await("document.getElementById('run-down').innerText === 'Run down'");
        assertTrue(browser.text("halt").contains("called off"), browser.text("halt"));
        assertEquals("", browser.text("running"));
    }

    @Test
    void paper_ofAChangedBench_showsWhatHasBecomeOfIt() throws IOException {
        show("paper", demo("side-by-side-one-reversed"));
        browser.run("window.dispatchEvent(new Event('beforeprint'));");
        assertEquals(
                "live alive",
                browser.run("return document.documentElement.className;").asText());
        browser.run("window.dispatchEvent(new Event('afterprint'));");
        browser.tap(pointer, "part-B");
        browser.tap(pointer, "flip");
        browser.run("window.dispatchEvent(new Event('beforeprint'));");
        assertEquals(
                "live alive changed",
                browser.run("return document.documentElement.className;").asText());
        assertTrue(browser.run("return document.getElementById('paper-share').textContent;")
                .asText()
                .startsWith("sagwise1:"));
        browser.run("window.dispatchEvent(new Event('afterprint'));");
    }

    @Test
    void reader_withKeysAlone_holdsTurnsAndUndoes() throws IOException {
        show("keys", demo("side-by-side-one-reversed"));
        browser.run("document.getElementById('part-B').focus();");
        browser.keys("\uE007");
        browser.await("!document.getElementById('card-part').hidden");
        browser.run("document.getElementById('flip').focus();");
        browser.keys(" ");
        browser.await("!document.getElementById('undo').disabled");
        browser.run("document.activeElement.blur();");
        browser.keys("+ ");
        browser.await("parseFloat(document.getElementById('watts').innerText) > 10");
        browser.keys("- ");
        browser.await("parseFloat(document.getElementById('watts').innerText) === 0");
        browser.keys("+\uE009", "z", "-\uE009");
        browser.await("document.getElementById('undo').disabled");
    }

    @Test
    void bench_ofManyCells_isReadableAndCanBeSeenWhole() throws IOException {
        Scenario many = TradeWords.read("6s4p 2500 mAh 20 A; coil 3", CatalogueLoader.builtIn(), Locale.ENGLISH)
                .scenario()
                .orElseThrow();
        browser.go(Files.writeString(folder.resolve("pack.html"), writer.write(many))
                .toUri()
                .toString());
        browser.await("document.documentElement.className === 'live alive' && window.sagwise");
        double atFirst = letters();
        assertTrue(atFirst >= 8, atFirst + " px");
        if (browser.run("return !document.getElementById('zoom').hidden;").asBoolean()) {
            browser.tap(pointer, "zoom");
            browser.await(
                    "document.getElementById('sheet').clientWidth <= document.getElementById('felt').clientWidth");
            assertTrue(letters() < atFirst, letters() + " px");
            browser.tap(pointer, "zoom");
            assertEquals(atFirst, letters(), 0.1);
        }
        assertTrue(
                browser.run("return document.documentElement.scrollWidth <= window.innerWidth;")
                        .asBoolean(),
                "wider than the page");
    }

    /** Height of the smallest letters on the bench, CSS pixels. */
    private double letters() throws IOException {
        return browser.run("return Math.min.apply(null, Array.from(document.querySelectorAll('#bench text'))"
                        + ".map(function (it) { return parseFloat(getComputedStyle(it).fontSize)"
                        + " * it.getScreenCTM().a; }));")
                .asDouble();
    }

    @Test
    void reader_whoTurnedACell_seesWhatThatDidNumberByNumber() throws IOException {
        show("changes", demo("side-by-side-one-reversed"));
        browser.unfold("compare-part", "#compare > p");
        assertTrue(browser.text("compare").startsWith("Nothing is changed yet"), browser.text("compare"));
        browser.tap(pointer, "part-B");
        browser.tap(pointer, "flip");
        browser.await("document.querySelector('#compare table.compare')");

        String said = browser.text("compare");
        assertTrue(said.contains("Cell B is turned round"), said);
        assertTrue(said.contains("No longer warned of:"), said);
        assertEquals(
                "as it came/now",
                browser.run("return Array.from(document.querySelectorAll('#compare table.compare thead th'))"
                                + ".map(function (it) { return it.textContent; }).join('/');")
                        .asText());
        assertTrue(
                browser.run("return document.documentElement.scrollWidth <= window.innerWidth;")
                        .asBoolean(),
                "wider than the page");
        browser.run("document.querySelector('#compare-part summary').focus();");
        browser.keys("\uE007");
        browser.await("!document.querySelector('#compare-part details').open");
        browser.tap(pointer, "undo");
        browser.run("document.querySelector('#compare-part details').open = true;");
        browser.await("document.querySelector('#compare > p').innerText.startsWith('Nothing is changed yet')");
    }

    /** The words of joints are those of reports, which a page has too; a note stands on one. */
    @Test
    void reader_whoCutAJoint_seesWhichOne() throws IOException {
        show(
                "cut",
                PageWriterTest.read("{\"sagwise\":1,\"parts\":[{\"id\":\"A\",\"kind\":\"cell\","
                        + "\"model\":\"inr18650-2500-20A\",\"charge\":1},{\"id\":\"coil\",\"kind\":\"coil\",\"ohm\":1}],"
                        + "\"links\":[{\"id\":\"j\",\"from\":\"A.+\",\"to\":\"coil.1\",\"contact_mohm\":2},"
                        + "{\"from\":\"coil.2\",\"to\":\"A.-\",\"jumper\":{\"awg\":20,\"length_mm\":50}}],"
                        + "\"notes\":[{\"on\":\"j\",\"text\":\"loose\\nhere\"}]}"));
        browser.unfold("joints-part", "#joints > li");
        browser.unfold("compare-part", "#compare > p");
        browser.tap(pointer, "cut-0");
        browser.await("document.querySelector('#compare .bullets')");

        String said = browser.text("compare");
        assertTrue(said.contains("touches the coil") && said.contains("loose / here"), said);
        browser.tap(pointer, "cut-0");
        browser.await("document.querySelectorAll('#compare .bullets li').length > 1");
        assertTrue(browser.text("compare").contains("AWG 20"), browser.text("compare"));
    }

    @Test
    void page_whoseEngineDoesNotFit_saysSoAndWhatThereIsToSay() throws IOException {
        String other =
                new String(engine, StandardCharsets.UTF_8) + ";main = function () { throw new Error('other'); };";
        String page =
                new PageWriter(other.getBytes(StandardCharsets.UTF_8), Locale.ENGLISH).write(demo("two-in-a-row"));
        browser.go(
                Files.writeString(folder.resolve("broken.html"), page).toUri().toString());
        browser.await("document.documentElement.className === ''");
        assertTrue(browser.text("broken").startsWith("This page could not be started"), browser.text("broken"));
        assertTrue(browser.text("still").length() > 100);
    }

    @Test
    void reader_changesAValueAndLetsTimeRun() throws IOException {
        show("values", demo("two-cells-side-by-side"));
        browser.tap(pointer, "part-coil");
        browser.run("var f = document.getElementById('set-ohm'); f.value = '500 mohm';"
                + " f.dispatchEvent(new Event('change'));");
        browser.await("!document.getElementById('undo').disabled");
        browser.run("var f = document.getElementById('set-ohm'); f.value = 'much';"
                + " f.dispatchEvent(new Event('change'));");
        assertTrue(browser.run("return document.querySelector('#set-ohm ~ .answer').innerText;")
                        .asText()
                        .length()
                > 10);
        browser.tap(pointer, "run-down");
        browser.await("document.getElementById('halt').innerText.length > 40");
        browser.await("document.querySelectorAll('#curves > figure > svg').length === 4");
        browser.tap(pointer, "language");
        browser.await("document.documentElement.lang === 'de'");
        browser.tap(pointer, "as-schematic");
        browser.tap(pointer, "copy");
        browser.await("document.getElementById('share-text').value.startsWith('sagwise1:')");
        assertEquals(List.of(), browser.requests());
    }

    /** Only what has changed is given to the browser: what then stands there must be the whole picture all the same. */
    @Test
    void pictures_afterEdits_areThoseThatWerePainted() throws IOException {
        show("patched", demo("two-by-two"));
        browser.tap(pointer, "part-B");
        for (String deed : List.of("flip", "keep", "as-schematic", "undo", "as-bench", "flip", "language", "redo")) {
            browser.run("document.getElementById('" + deed + "').click();");
            browser.await("!document.querySelector('[aria-busy=true]')");
            for (String room : List.of("bench", "stairs")) {
                assertTrue(
                        browser.run("var room = document.getElementById('" + room + "');"
                                        + " var whole = document.createElement('div'); whole.innerHTML = room.shown.whole;"
                                        + " return room.children.length === 1"
                                        + " && whole.firstChild.isEqualNode(room.firstChild);")
                                .asBoolean(),
                        room + " after " + deed);
            }
        }
    }

    @Test
    void page_ofMorePartsThanItCanFollow_saysSoInWords() throws IOException {
        String parts = IntStream.range(0, 301)
                .mapToObj(i -> "{\"id\":\"r" + i + "\",\"kind\":\"resistor\",\"ohm\":1}")
                .collect(Collectors.joining(","));
        String page = writer.write(PageWriterTest.read("{\"sagwise\":1,\"parts\":[" + parts + "],\"links\":[]}"));
        browser.go(Files.writeString(folder.resolve("large.html"), page).toUri().toString());
        browser.await("!document.getElementById('failed').hidden");
        assertTrue(browser.text("failed").startsWith("This bench has 301 parts"), browser.text("failed"));
        assertTrue(browser.text("still").length() > 100);
    }

    @Test
    void page_ofAHostileScenario_runsNothingAndAsksForNothing() throws IOException {
        String text = HOSTILE.replace("\\", "\\\\").replace("\"", "\\\"");
        show(
                "hostile",
                PageWriterTest.read("{\"sagwise\":1,\"title\":\"" + text + "\",\"about\":\"" + text
                        + "\",\"parts\":[{\"id\":\"A\",\"kind\":\"cell\",\"label\":\"" + text.substring(0, 50)
                        + "\",\"model\":\"inr18650-2500-20A\",\"charge\":1},{\"id\":\"coil\",\"kind\":\"coil\",\"ohm\":0.1}],"
                        + "\"links\":[{\"from\":\"A.+\",\"to\":\"coil.1\",\"ideal\":true},"
                        + "{\"from\":\"coil.2\",\"to\":\"A.-\",\"ideal\":true}],\"notes\":[{\"on\":\"A\",\"text\":\""
                        + text + "\"}]}"));
        browser.tap(pointer, "part-A");
        browser.tap(pointer, "language");
        browser.tap(pointer, "as-schematic");

        assertEquals("undefined", browser.run("return typeof window.ran;").asText());
        assertEquals(
                0,
                browser.run("return document.querySelectorAll('img').length;").asInt());
        assertEquals(List.of(), browser.requests());
        assertTrue(browser.text("title").contains("<script>"));
        assertEquals(
                "refused",
                browser.run("try { return fetch ? 'refused' : ''; } catch (e) { return 'refused'; }")
                        .asText());
    }

    /** Every demo in each browser once, its card open and all that is folded unfolded. */
    @Test
    void accessibilityChecker_findsNothingSerious() throws IOException {
        String axe;
        try (InputStream file = InBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            axe = new String(file.readAllBytes(), StandardCharsets.UTF_8) + "; window.axe = axe || window.axe;";
        }
        List<String> found = new ArrayList<>();
        for (String name : looked()) {
            Scenario demo = demo(name);
            show("access", demo);
            browser.run(
                    "document.getElementById(arguments[0]).click();",
                    "part-" + demo.parts().get(0).id());
            browser.run("document.querySelectorAll('details').forEach(function (d) { d.open = true; });");
            browser.await("document.querySelector('#joints > li')");
            browser.run(
                    axe + "window.found = null; window.axe.run().then(function (r) { window.found = r.violations; });");
            browser.await("window.found");
            browser.run(
                            "return window.found.filter(function (v) {"
                                    + " return v.impact === 'serious' || v.impact === 'critical'; }).map(function (v) {"
                                    + " return v.id + ': ' + v.nodes.map(function (n) { return n.html; }).slice(0, 3).join(' '); });")
                    .forEach(it -> found.add(name + ": " + it.asText()));
        }

        assertEquals(List.of(), found);
    }

    private List<String> looked() {
        List<String> all = DemoScenarios.names();
        return isFirstOfItsKind()
                ? IntStream.range(0, all.size())
                        .filter(i -> i % EVERY == 0)
                        .mapToObj(all::get)
                        .toList()
                : List.of("side-by-side-one-reversed");
    }

    /** Whether this is the one of its browser's tests that tries all demos. */
    private boolean isFirstOfItsKind() {
        return width == (kind == Browser.Kind.CHROMIUM ? 390 : 1920);
    }

    @Test
    void engine_onEveryDemoAndOnRandomBenches_saysWhatTheJvmSays() throws IOException {
        assumeTrue(isFirstOfItsKind(), "asked in this browser at another size");
        show("numbers", demo("two-in-a-row"));
        Catalogue catalogue = CatalogueLoader.builtIn();
        for (String name : DemoScenarios.names()) {
            compare(name, demo(name), catalogue, true);
        }
        RandomScenarios random = new RandomScenarios(new Random(11), catalogue);
        for (int i = 0; i < RANDOM_BENCHES; i++) {
            compare("bench " + i, random.scenario(), catalogue, false);
        }
    }

    private void compare(String name, Scenario scenario, Catalogue catalogue, boolean ahead) throws IOException {
        String json = ScenarioWriter.writeCompact(scenario);
        String here = whole(Answers.of(scenario, catalogue, ahead));
        String there = browser.run(
                        "return sagwise.answers(arguments[0], arguments[1] === 'true').replace(/[\\ud800-\\udfff]/g, '?');",
                        json,
                        String.valueOf(ahead))
                .asText();
        // The pictures of a random bench are left out: they print what is next to nothing, too, whose digits are noise.
        List<String> ours = here.lines().toList();
        List<String> theirs = there.lines().toList();
        assertEquals(ours.size(), theirs.size(), name + "\n" + there);
        for (int i = 0; i < ours.size(); i++) {
            assertTrue(isSame(ours.get(i), theirs.get(i)), name + "\n" + ours.get(i) + "\n" + theirs.get(i));
        }
    }

    /** Halves of letters, which the driver of a browser cannot hand on. */
    private static String whole(String text) {
        StringBuilder out = new StringBuilder(text);
        for (int i = 0; i < out.length(); i++) {
            if (Character.isSurrogate(out.charAt(i))) {
                out.setCharAt(i, '?');
            }
        }
        return out.toString();
    }

    /** The same text, its places to one in their last digit: sines of a browser end in other bits than ours. */
    private static boolean isSamePicture(String one, String other) {
        List<String> ours =
                NUMBER.matcher(one).results().map(MatchResult::group).toList();
        List<String> theirs =
                NUMBER.matcher(other).results().map(MatchResult::group).toList();
        boolean same = ours.size() == theirs.size()
                && NUMBER.matcher(one)
                        .replaceAll("#")
                        .equals(NUMBER.matcher(other).replaceAll("#"));
        for (int i = 0; same && i < ours.size(); i++) {
            same = Math.abs(Double.parseDouble(ours.get(i)) - Double.parseDouble(theirs.get(i))) < LAST_DIGIT;
        }
        return same;
    }

    private static boolean isSame(String one, String other) {
        int at = one.lastIndexOf(" = ");
        if (one.equals(other)) {
            return true;
        } else if (one.startsWith("<")) {
            return isSamePicture(one, other);
        } else if (at < 0
                || at != other.lastIndexOf(" = ")
                || !one.substring(0, at).equals(other.substring(0, at))) {
            return false;
        }
        String[] ours = one.substring(at + 3).split(" ");
        String[] theirs = other.substring(at + 3).split(" ");
        List<String> apart = new ArrayList<>();
        for (int i = 0; i < ours.length; i++) {
            double a = Double.parseDouble(ours[i]);
            double b = Double.parseDouble(theirs[i]);
            boolean same = Double.compare(a, b) == 0
                    || Math.abs(a - b) <= Math.max(ABSOLUTE, RELATIVE * Math.max(Math.abs(a), Math.abs(b)));
            if (!same) {
                apart.add(ours[i] + " / " + theirs[i]);
            }
        }
        return apart.isEmpty();
    }
}
