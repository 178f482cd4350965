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
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.file.LessonLibrary;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.lesson.LearnedCode;
import org.sagwise.lesson.LessonFixture;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;
import org.sagwise.lesson.Sureness;
import org.sagwise.lesson.Verdict;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.JoinTerminals;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.RichText;

/** A lesson's page in a real browser, 390 by 844, by touch: it says what the player on a JVM says. */
@Tag("browser")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class LessonInBrowserTest {

    private static final String LESSON = "04-side-by-side";
    private static final String NOTHING = "—";
    private static final int MOST_BYTES = 1_000_000;

    /** As a browser does that is told to keep nothing. */
    private static final String REFUSING = "<script>Object.defineProperty(window, 'localStorage', { get: function () {"
            + " throw new DOMException('refused', 'SecurityError'); } });</script>";

    private final Browser.Kind kind;
    private final Words words = Words.in(Locale.ENGLISH);
    private Path folder;
    private Browser browser;
    private byte[] engine;

    LessonInBrowserTest(Browser.Kind kind) {
        this.kind = kind;
    }

    @BeforeAll
    void open(@TempDir(cleanup = CleanupMode.NEVER) Path empty) throws IOException {
        folder = empty;
        engine = Engine.compiled();
        assumeTrue(kind.isHere(), kind + " is not installed");
        browser = Browser.open(kind, folder.resolve("browser"), 390, 844, true);
    }

    @AfterAll
    void close() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    private void show(String name, String page) throws IOException {
        assertTrue(page.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES, name + " is too large");
        Path file = Files.writeString(folder.resolve(name + ".html"), page);
        browser.go(file.toUri().toString());
        browser.await(
                "document.documentElement.className === 'live alive' && (window.sagwise || document.body.className === 'check')");
    }

    /** As if nobody had been here before: other lessons would ask their questions first. */
    private void showFresh(String name, String page) throws IOException {
        show(name, page);
        browser.run("localStorage.clear();");
        show(name, page);
    }

    private void tap(String id) throws IOException {
        browser.tap("touch", id);
    }

    /** As a page prints a text: without signs of emphasis, every kind of space the same. */
    private static String plain(String markdown) {
        return even(RichText.of(markdown).stream()
                .flatMap(block -> block.runs().stream())
                .map(RichText.Run::text)
                .collect(Collectors.joining()));
    }

    private static String even(String text) {
        return text.replaceAll("[\\s\u00a0\u202f\u2009]+", " ").strip();
    }

    private List<String> texts(String selector) throws IOException {
        List<String> all = new ArrayList<>();
        browser.run(
                        "return [].map.call(document.querySelectorAll(arguments[0]), function (e) {"
                                + " return e.textContent; });",
                        selector)
                .forEach(text -> all.add(even(text.asText())));
        return all;
    }

    private void choose(LessonPlayer asked, Step.Choose question, int place) throws IOException {
        String wanted = plain(asked.say(question.choices().get(place).text()));
        List<String> answers = new ArrayList<>();
        for (int i = 1; i <= question.choices().size(); i++) {
            answers.add(even(
                    browser.run("return document.querySelector('#choice-" + i + " > span:last-child').textContent;")
                            .asText()));
        }
        int button = answers.indexOf(wanted);
        assertTrue(button >= 0, wanted + " in " + answers);
        tap("choice-" + (button + 1));
    }

    private void join(JoinTerminals move) throws IOException {
        browser.unfold("joints-part", "#join-from > option");
        browser.run("document.getElementById('join-from').value = '"
                + move.terminals().get(0) + "';"
                + "document.getElementById('join-to').value = '"
                + move.terminals().get(1) + "';"
                + "document.getElementById('join-how').value = 'IDEAL';");
        tap("join");
    }

    private void type(String text) throws IOException {
        browser.run("document.getElementById('lesson-number').value = arguments[0];", text);
        tap("lesson-number-do");
    }

    private void sameVerdicts(LessonPlayer player) throws IOException {
        List<Verdict> due = player.verdicts();
        assertEquals(
                due.stream().map(it -> plain(it.reply())).toList(),
                texts("#lesson-step .verdict .reply"),
                "step " + player.at());
        assertEquals(
                due.stream().filter(Verdict::met).count(),
                browser.run("return document.querySelectorAll('#lesson-step .verdict.met').length;")
                        .asLong());
    }

    /** Every other question wrong, every reading first typed wrong. */
    @Test
    void lesson_playedByTouch_repliesAsTheJvmDoes() throws IOException {
        showFresh("lesson", LessonPageWriterTest.page(engine, LessonLibrary.source(LESSON), Locale.ENGLISH));
        LessonPlayer player =
                LessonPlayer.begin(LessonFixture.builtIn(LESSON), LessonFixture.CATALOGUE, Locale.ENGLISH);
        boolean right = false;
        for (int i = 0; i < player.lesson().steps().size(); i++) {
            Step step = player.step();
            browser.await("document.getElementById('lesson-place').textContent === 'Step " + (i + 1) + " of "
                    + player.lesson().steps().size() + "'");
            if (step instanceof Step.Choose question) {
                if (question.role() == Step.Role.PREDICT) {
                    assertEquals(NOTHING, even(browser.text("watts")));
                    assertEquals(
                            "true",
                            browser.run("return String(document.getElementById('fire').disabled);")
                                    .asText());
                    browser.unfold("table-part", "#readings td.number");
                    assertTrue(texts("#readings td.number").stream().allMatch(NOTHING::equals));
                }
                int place = right
                        ? question.right()
                        : (question.right() + 1) % question.choices().size();
                right = !right;
                choose(player, question, place);
                player = player.choose(place);
                if (player.isAskingHowSure()) {
                    tap("sure-3");
                    player = player.sure(Optional.of(Sureness.SURE));
                }
            } else if (step instanceof Step.Do) {
                for (Edit move : step.solution()) {
                    join((JoinTerminals) move);
                    player = player.edited(move.apply(player.bench()));
                }
                browser.await("document.querySelector('#lesson-step .done')");
            } else if (step instanceof Step.Measure measure
                    && measure.reading().toString().startsWith("run/")) {
                tap("lesson-show");
                player = player.showSolution();
            } else if (step instanceof Step.Measure measure) {
                type("99");
                player = player.type(99);
                assertEquals(
                        even(words.ui().say("lesson.not-so.held")),
                        texts("#lesson-status").get(0));
                browser.holdUntil(
                        "touch", "fire", "document.getElementById('fire').getAttribute('aria-pressed') === 'true'");
                player = player.edited(player.bench(), Press.HELD);
                double real = player.read(measure.reading()).orElseThrow();
                type(String.valueOf(real));
                player = player.type(real);
                browser.await("document.querySelector('#lesson-step .done')");
            }
            sameVerdicts(player);
            assertTrue(player.mayGoOn(), "step " + i);
            player = player.next();
            tap("lesson-next");
        }
        browser.await("document.getElementById('lesson-code')");
        LearnedCode code = LearnedCode.read(browser.text("lesson-code")).orElseThrow();
        assertEquals(LearnedCode.of(player).answers(), code.answers());
        assertEquals(LearnedCode.of(player).shape(), code.shape());
        assertEquals(
                player.summary().stream().map(it -> plain(it.question())).toList(),
                texts("#lesson-step .verdict > div:first-child"));
        assertEquals(List.of(), browser.requests());
    }

    @Test
    void lesson_thatWasLeft_goesOnAfterTheBrowserWasAway() throws IOException {
        String page = LessonPageWriterTest.page(engine, LessonLibrary.source("01-close-the-ring"), Locale.ENGLISH);
        showFresh("left", page);
        tap("lesson-next");
        browser.await("document.getElementById('lesson-place').textContent.startsWith('Step 2')");
        tap("choice-1");
        show("left", page);
        assertEquals("Step 2", browser.text("lesson-place").substring(0, 6));
        assertEquals(
                1,
                browser.run("return document.querySelectorAll('.choices .is-chosen').length;")
                        .asInt());
        tap("language");
        browser.await("document.documentElement.lang === 'de'");
        assertEquals(
                1,
                browser.run("return document.querySelectorAll('.choices .is-chosen').length;")
                        .asInt());
    }

    @Test
    void lesson_whereTheBrowserKeepsNothing_saysSoAndGoesOn() throws IOException {
        String page = LessonPageWriterTest.page(engine, LessonLibrary.source("01-close-the-ring"), Locale.ENGLISH)
                .replaceFirst("<meta http-equiv=[^>]*>", Matcher.quoteReplacement(REFUSING));
        show("refused", page);
        assertEquals(words.say("lesson.not-kept"), browser.text("lesson-not-kept"));
        tap("lesson-next");
        browser.await("document.getElementById('lesson-place').textContent.startsWith('Step 2')");
        tap("choice-1");
        browser.await("document.querySelector('.choices .is-chosen')");
        show("refused", page);
        assertEquals("Step 1", browser.text("lesson-place").substring(0, 6));
    }

    @Test
    void lesson_ofTheInsideOfACell_opensItOnItsCard() throws IOException {
        showFresh(
                "inside", LessonPageWriterTest.page(engine, LessonLibrary.source("19-inside-a-cell"), Locale.ENGLISH));
        assertEquals(List.of(even(words.say("lesson.instead.card").replace("*", ""))), texts("#lesson-step .here"));
        tap("part-A");
        browser.run("document.getElementById('inside').open = true;");
        tap("inside-separator");
        assertTrue(
                texts("#inside [role=status]").get(0).startsWith("Separator"),
                texts("#inside").toString());
        assertEquals(
                1,
                browser.run("return document.querySelectorAll('#inside svg').length;")
                        .asInt());
    }

    @Test
    void lesson_ofHostileTexts_runsNothingAndAsksForNothing() throws IOException {
        showFresh(
                "hostile-lesson",
                LessonPageWriterTest.page(
                        engine,
                        LessonPageWriterTest.hostile(
                                LESSON, "</script><script>window.ran=1</script><img src=x onerror='window.ran=1'>"),
                        Locale.ENGLISH));
        tap("lesson-next");
        tap("choice-1");
        tap("language");

        assertEquals("undefined", browser.run("return typeof window.ran;").asText());
        assertEquals(
                0,
                browser.run("return document.querySelectorAll('img').length;").asInt());
        assertTrue(browser.text("title").contains("<script>"));
        assertEquals(List.of(), browser.requests());
    }

    @Test
    void check_allOpen_tellsWhatToLookAt() throws IOException {
        showFresh("check", new LessonPageWriter(engine, Locale.ENGLISH).write(Form.A));
        tap("question-1-2");
        tap("check-done");
        browser.await("document.getElementById('check-result')");
        LearnedCode code = LearnedCode.read(browser.text("lesson-code")).orElseThrow();
        assertEquals("b-----------", code.answers());
        assertEquals(List.of(), serious());
    }

    @Test
    void accessibilityChecker_findsNothingSerious() throws IOException {
        showFresh("access", LessonPageWriterTest.page(engine, LessonLibrary.source("05-end-to-end"), Locale.ENGLISH));
        assertEquals(List.of(), serious());
        browser.run("document.getElementById('lesson-next').click();");
        browser.await("document.querySelector('.choices')");
        assertEquals(List.of(), serious());
        browser.run("document.getElementById('choice-1').click();");
        assertEquals(List.of(), serious());
    }

    private List<String> serious() throws IOException {
        try (InputStream axe = InBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            browser.run(new String(axe.readAllBytes(), StandardCharsets.UTF_8) + "; window.axe = axe || window.axe;"
                    + "document.querySelectorAll('details').forEach(function (d) { d.open = true; });"
                    + "window.found = null; window.axe.run().then(function (r) { window.found = r.violations; });");
        }
        browser.await("window.found");
        List<String> found = new ArrayList<>();
        browser.run(
                        "return window.found.filter(function (v) {"
                                + " return v.impact === 'serious' || v.impact === 'critical'; }).map(function (v) {"
                                + " return v.id + ': ' + v.nodes.map(function (n) { return n.html; }).slice(0, 3).join(' '); });")
                .forEach(it -> found.add(it.asText()));
        return found;
    }
}
