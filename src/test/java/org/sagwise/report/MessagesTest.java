package org.sagwise.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.file.ShareText;
import org.sagwise.part.Catalogue;
import org.sagwise.part.key.Keys;
import org.sagwise.report.explain.ExplainedPost;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.text.Signs;
import org.sagwise.words.TradeWords;
import org.sagwise.words.WordsBench;

/**
 * A helper's evening: messages that strangers might write, each built by one line of words, and what the answers, long
 * and short, in both languages, must say and must not say.
 */
class MessagesTest {

    private static final Path FOLDER = Path.of("src/test/resources/messages");
    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();
    private static final int MOST_WORDS = 150;

    private record Message(String name, JsonNode node) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Message> messages() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().map(MessagesTest::message).toList();
        }
    }

    private static Message message(Path file) {
        try {
            return new Message(file.getFileName().toString(), new YAMLMapper().readTree(file.toFile()));
        } catch (IOException failure) {
            throw new AssertionError(file.toString(), failure);
        }
    }

    @Test
    void evening_hasFifteenMessages() throws IOException {
        assertEquals(15, messages().size());
    }

    @ParameterizedTest
    @MethodSource("messages")
    void answer_inBothLanguages_saysWhatItMustAndNothingThatItMustNot(Message message) {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            JsonNode points = message.node().get(locale.getLanguage());
            String post = post(message, ExplainedPost.Size.LONG, locale);
            String answer = post(message, ExplainedPost.Size.SHORT, locale);

            says(post, points.get("says"));
            says(answer, points.get("short"));
            points.get("never").forEach(never -> {
                lacks(post, never.asText());
                lacks(answer, never.asText());
            });
            assertTrue(answer.split("\\s+").length <= MOST_WORDS, answer);
        }
    }

    /** What the line leaves open is told in the language of the post, whatever that of the bench. */
    @Test
    void longPost_ofABenchMadeOfALine_saysWhatWasAssumedUntilTheBenchIsChanged() {
        String line = "2p 2500 mAh 20 A; coil 0.5";
        for (Locale made : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            Scenario bench =
                    saved(TradeWords.read(line, CATALOGUE, made).scenario().orElseThrow());
            String english = post(bench, ExplainedPost.Size.LONG, Optional.empty(), Locale.ENGLISH);
            assertTrue(holds(english, "Assumed, as nobody said it: The catalogue has one that fits"), english);
            assertTrue(holds(english, "The cells are full. Sound contacts of 4 mΩ"), english);
            String german = post(bench, ExplainedPost.Size.LONG, Optional.empty(), Locale.GERMAN);
            assertTrue(holds(german, "Angenommen, weil es nicht angegeben ist: Der Katalog hat"), german);

            Scenario measured = new SetPartKeys("A", Keys.of("internal_mohm", 40), Set.of()).apply(bench);
            lacks(post(measured, ExplainedPost.Size.LONG, Optional.empty(), Locale.ENGLISH), "nobody said it: The");
        }
    }

    private static Scenario saved(Scenario bench) {
        return new ScenarioReader(CATALOGUE)
                .read(ScenarioWriter.write(bench).getBytes(StandardCharsets.UTF_8))
                .scenario()
                .orElseThrow();
    }

    private static String post(Message message, ExplainedPost.Size size, Locale locale) {
        Optional<String> symptom =
                Optional.ofNullable(message.node().get("symptom")).map(JsonNode::asText);
        WordsBench built = TradeWords.read(message.node().get("line").asText(), CATALOGUE, locale);
        Scenario bench = built.scenario().orElseThrow(() -> new AssertionError(message + " " + built));
        return post(bench, size, symptom, locale);
    }

    private static String post(Scenario bench, ExplainedPost.Size size, Optional<String> symptom, Locale locale) {
        Moment start = new Moment(Assessment.of(bench, CATALOGUE).lookingAhead(), 0);
        ExplainedPost.Wish wish = new ExplainedPost.Wish(size, symptom, Optional.empty());
        return ExplainedPost.write(start, PostFormat.MARKDOWN, ShareText::of, wish, locale, Signs.PRINT)
                .replaceAll("[*_\\\\]", "");
    }

    /** Each point, or one of several ways of saying it. */
    private static void says(String post, JsonNode points) {
        points.forEach(point -> assertTrue(
                Stream.of(point.asText().split("\\|")).anyMatch(way -> holds(post, way)),
                "lacks “" + point.asText() + "”:\n" + post));
    }

    private static void lacks(String post, String words) {
        assertFalse(holds(post, words), "says “" + words + "”:\n" + post);
    }

    private static boolean holds(String post, String words) {
        return post.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
    }
}
