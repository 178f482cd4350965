package org.sagwise.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.text.Languages;
import org.sagwise.text.Signs;

/** A post calls terminals by words, in both languages; a file's keys stay in the share text. */
class PlainWordsTest {

    private static final Path DEMOS = Path.of("demo-scenarios");

    static Stream<Scenario> demos() {
        return Languages.locales().stream()
                .flatMap(locale -> DemoScenarios.names().stream()
                        .map(name -> new ScenarioReader(Stories.CATALOGUE)
                                .read(DemoScenarios.bytes(name, locale))
                                .scenario()
                                .orElseThrow()));
    }

    private static Scenario read(Path file) {
        return new ScenarioReader(Stories.CATALOGUE).read(file).scenario().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void post_ofAnyDemo_namesNoTerminalByItsKey(Scenario scenario) {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            String post = Stories.post(scenario, PostFormat.TEXT, locale, Signs.PRINT);
            List<String> words = List.of(
                    post.replaceAll("sagwise1:\\S+(\\s\\S{40,})*\\s\\S+", "").split("\\s+"));
            scenario.parts().stream()
                    .flatMap(part -> part.terminals().stream())
                    .map(TerminalRef::toString)
                    .forEach(key ->
                            assertFalse(words.stream().anyMatch(word -> isKey(word, key)), key + " in\n" + post));
        }
    }

    /** A sentence may end in a number: "coil." and "1" are no key, "coil.1," is one. */
    private static boolean isKey(String word, String key) {
        return word.replaceAll("^[(„“\"]+|[),;:.“\"]+$", "").equals(key);
    }

    @Test
    void post_ofABenchWithNotes_tellsThemAll() {
        Scenario scenario = read(DEMOS.resolve("side-by-side-one-reversed.sagwise.json"));
        String post = Stories.post(scenario, PostFormat.TEXT, Locale.ENGLISH, Signs.PRINT);
        assertTrue(post.replaceAll("\\s+", " ").contains("note on cell B: \"Turned round in the sled\""), post);
    }
}
