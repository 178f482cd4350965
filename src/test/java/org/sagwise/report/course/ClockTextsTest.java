package org.sagwise.report.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The words of the clock are there in both languages, none is left over, and time reads right. */
class ClockTextsTest {

    private static final Path TEXTS = Path.of("src/main/resources/org/sagwise/texts");
    private static final Path CODE = Path.of("src/main/java/org/sagwise");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z0-9.-]*)\"");
    private static final Pattern ASKED = Pattern.compile("[. ]word\\(\\s*\"([a-z][a-z0-9.-]*)\"");
    private static final Pattern PROMISE = Pattern.compile("\\b(safe|safely|ungefährlich)\\b");

    private static Properties bundle(String name) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(TEXTS.resolve(name))) {
            properties.load(reader);
        }
        return properties;
    }

    private static Set<String> inCode(Pattern pattern) throws IOException {
        StringBuilder code = new StringBuilder();
        for (String folder : new String[] {"ui/clock", "report/course", "picture/plot"}) {
            try (Stream<Path> files = Files.walk(CODE.resolve(folder))) {
                for (Path file :
                        files.filter(f -> f.toString().endsWith(".java")).toList()) {
                    code.append(Files.readString(file));
                }
            }
        }
        return pattern.matcher(code)
                .results()
                .map(match -> match.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> composed() {
        Set<String> keys = new TreeSet<>();
        Stream.of(HaltWords.Topic.values()).forEach(topic -> keys.add("do." + topic.word()));
        Stream.of(Quantity.values()).forEach(each -> keys.add("curves." + each.word()));
        Stream.of("on", "off").forEach(field -> keys.add("run-down." + field + ".tip"));
        return keys;
    }

    @Test
    void bundles_ofBothLanguages_haveTheSameKeys() throws IOException {
        assertEquals(
                new TreeSet<>(bundle("clock.properties").stringPropertyNames()),
                new TreeSet<>(bundle("clock_de.properties").stringPropertyNames()));
    }

    @Test
    void bundle_everyKeyThatIsAskedFor_isThere() throws IOException {
        Set<String> missing = inCode(ASKED);
        missing.removeIf(key -> key.endsWith("."));
        missing.addAll(composed());
        missing.removeAll(bundle("clock.properties").stringPropertyNames());

        assertEquals(Set.of(), missing);
    }

    @Test
    void bundle_everyKey_isUsed() throws IOException {
        Set<String> unused = new TreeSet<>(bundle("clock.properties").stringPropertyNames());
        unused.removeAll(inCode(LITERAL));
        unused.removeAll(composed());

        assertEquals(Set.of(), unused);
    }

    @ParameterizedTest
    @ValueSource(strings = {"clock.properties", "clock_de.properties"})
    void bundle_everySentence_promisesNothing(String name) throws IOException {
        bundle(name)
                .forEach((key, text) ->
                        assertFalse(PROMISE.matcher(text.toString()).find(), "" + key));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0:00.0",
        "2.4, 0:02.4",
        "2.49999, 0:02.4",
        "59.99, 0:59.9",
        "60, 1:00.0",
        "3599.95, 59:59.9",
        "3600, 1:00:00",
        "45962.7, 12:46:02"
    })
    void time_ofAnyLength_isWrittenAsAClockHasIt(double seconds, String expected) {
        assertEquals(expected, new ClockTexts(Locale.ENGLISH).time(seconds));
    }

    @ParameterizedTest
    @CsvSource({"0, 0:00", "0.5, 0:00.5", "90, 1:30", "3600, 1:00 h", "5400, 1:30 h", "3630, 1:00:30"})
    void shortTime_atAnAxis_isNoLongerThanItMust(double seconds, String expected) {
        assertEquals(expected, new ClockTexts(Locale.ENGLISH).shortTime(seconds));
    }

    @Test
    void time_inGerman_hasAComma() {
        assertEquals("0:02,4", new ClockTexts(Locale.GERMAN).time(2.4));
    }
}
