package org.sagwise.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.report.explain.ExplainedPost;
import org.sagwise.report.post.PostFormat;
import org.sagwise.report.symptom.Symptom;
import org.sagwise.text.Languages;
import org.sagwise.text.Signs;

/** Short posts: never too long, and never without what matters. */
class ShortPostTest {

    /** Those whose answers are longest. */
    private static final List<Symptom> WORDIEST =
            List.of(Symptom.UNEVEN_GLOW, Symptom.CUTS_OUT, Symptom.HOT_CHARGING, Symptom.SHORT_LIFE);

    private static final Map<Locale, String> NOTICE = Map.of(
            Locale.ENGLISH, "A teaching model, no clearance to build", Locale.GERMAN, "keine Freigabe zum Bauen");

    private static Stream<String> demos() {
        return DemoScenarios.names().stream();
    }

    private static String post(String demo, Optional<String> asked, Locale locale) {
        var scenario = new ScenarioReader(Stories.CATALOGUE)
                .read(DemoScenarios.bytes(demo, locale))
                .scenario()
                .orElseThrow();
        Assessment assessment = Assessment.of(scenario, Stories.CATALOGUE).lookingAhead();
        return ExplainedPost.write(
                        Moment.start(assessment),
                        PostFormat.TEXT,
                        ShareText::of,
                        new ExplainedPost.Wish(ExplainedPost.Size.SHORT, asked, Optional.empty()),
                        locale,
                        Signs.PRINT)
                .replaceAll("\\s+", " ")
                .strip();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void post_ofAnyDemo_hasAtMost150WordsWithAnySymptomAndEndsWithTheNotice(String demo) {
        // In each language another of them by turns: each takes a search for cures.
        int turn = DemoScenarios.names().indexOf(demo);
        for (Locale locale : Languages.locales()) {
            Symptom symptom = WORDIEST.get(turn++ % WORDIEST.size());
            String asked = symptom.title(locale) + ", since I changed something here last week";
            String post = post(demo, Optional.of(asked), locale);
            assertTrue(post.split(" ").length <= 150, post.split(" ").length + " words: " + post);
            assertTrue(post.contains(symptom.title(locale)), post);
            assertFalse(post.contains("{"), post);
            assertFalse(post.contains("sagwise1:"), post);
            assertTrue(post.contains(NOTICE.get(locale)), post);
        }
    }

    @Test
    void post_ofAReversedCell_saysNumberLimitWhatToDoAndLayout() {
        String post = post("side-by-side-one-reversed", Optional.of("the batteries get hot"), Locale.ENGLISH);
        Stream.of(
                        "Please do not build or use it like this",
                        "175 A for a moment, where 20.0 A is the limit",
                        "“the batteries get hot” fits this bench: the cells drive current through one another",
                        "take the cells out only if cool and quiet",
                        "Do not use cell A and cell B again",
                        "with other cells: Turn cell B.")
                .forEach(words -> assertTrue(post.contains(words), words + "\n" + post));
    }

    /** What nobody should use is not timed by its run down to empty. */
    @Test
    void post_ofAShortedCell_tellsNoRunTime() {
        assertFalse(post("paper-clip-across-the-coil", Optional.empty(), Locale.ENGLISH)
                .contains("it runs"));
    }
}
