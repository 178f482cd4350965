package org.sagwise.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.lesson.LessonFixture;
import org.sagwise.part.Catalogue;
import org.sagwise.report.explain.ExplainedPost;
import org.sagwise.report.handout.Handout;
import org.sagwise.report.handout.Handout.Kind;
import org.sagwise.report.handout.HandoutHtml;
import org.sagwise.report.handout.HandoutMaker;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;

/** Every page that the program writes is sound HTML, as an independent checker sees it. */
class HtmlCheckTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static final int LESSONS_AT_A_TIME = 3;

    private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    @Test
    void findings_ofASpoiltPage_areThere() {
        assertNotEquals(List.of(), HtmlCheck.findings("<!DOCTYPE html><p><b>lost</p>"));
    }

    /** The languages by turns: a page is built the same way in each. */
    static Stream<Arguments> demos() {
        List<String> names = DemoScenarios.names();
        return IntStream.range(0, names.size())
                .mapToObj(i -> Arguments.of(names.get(i), LANGUAGES.get(i % LANGUAGES.size())));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void explanation_ofADemo_isSound(String name, Locale locale) {
        Scenario scenario = new ScenarioReader(CATALOGUE)
                .read(DemoScenarios.bytes(name, locale))
                .scenario()
                .orElseThrow();

        assertEquals(List.of(), HtmlCheck.findings(page(scenario, locale)));
    }

    @Test
    void explanation_ofWordsFromAHostileHand_isSound() {
        String hostile = "</title></svg><script>alert(1)</script>\"'&lt;&#0;]]>\u0000\ufffe\ud800";
        Scenario scenario = new ScenarioReader(CATALOGUE)
                .read(DemoScenarios.bytes("thin-wire"))
                .scenario()
                .orElseThrow()
                .withTitle(hostile)
                .withAbout(hostile + "\n\n- " + hostile + "\n\n[x](javascript:alert(1))");

        assertEquals(List.of(), HtmlCheck.findings(page(scenario, Locale.ENGLISH)));
    }

    private static String page(Scenario scenario, Locale locale) {
        return ExplainedPost.write(
                Moment.start(Assessment.of(scenario, CATALOGUE)), PostFormat.HTML, ShareText::of, locale, Signs.PRINT);
    }

    static Stream<Arguments> handouts() {
        return LANGUAGES.stream().flatMap(locale -> Stream.of(Kind.values()).map(kind -> Arguments.of(locale, kind)));
    }

    /** A few lessons at a time: the checker takes four times as long for a page of twice the length. */
    @ParameterizedTest
    @MethodSource("handouts")
    void handouts_ofAllLessons_areSound(Locale locale, Kind kind) {
        List<Handout> handouts = LessonLibrary.ids().stream()
                .map(LessonFixture::builtIn)
                .map(lesson -> HandoutMaker.make(lesson, LessonFixture.CATALOGUE, locale, kind))
                .toList();

        for (int from = 0; from < handouts.size(); from += LESSONS_AT_A_TIME) {
            List<Handout> some = handouts.subList(from, Math.min(handouts.size(), from + LESSONS_AT_A_TIME));
            assertEquals(List.of(), HtmlCheck.findings(HandoutHtml.write(some)));
        }
    }
}
