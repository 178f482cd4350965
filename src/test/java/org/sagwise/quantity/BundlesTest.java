package org.sagwise.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Both languages of every bundle say the same things with the same words filled in. */
class BundlesTest {

    private static final Path FOLDER = Path.of("src/main/resources/org/sagwise/texts");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d+");
    private static final Pattern LONE_APOSTROPHE = Pattern.compile("(?<!')'(?!')");

    /**
     * "the coil" in English, but "Wicklung {0}" in German, which would have to inflect the article;
     * "cell A's plus" in English, but "Pluspol von Zelle A" in German.
     */
    private static final Pattern OTHER_WORDS = Pattern.compile("(name\\.only|terminal)\\..*");

    static Stream<String> bundles() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".properties") && !name.endsWith("_de.properties"))
                    .map(name -> name.substring(0, name.indexOf('.')))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void bundle_inBothLanguages_hasSameKeysAndPlaceholders(String bundle) throws IOException {
        Properties english = load(bundle + ".properties");
        Properties german = load(bundle + "_de.properties");
        assertEquals(new TreeSet<>(english.keySet()), new TreeSet<>(german.keySet()));
        for (String key : english.stringPropertyNames()) {
            if (Set.of("names", "kinds").contains(bundle)
                    && OTHER_WORDS.matcher(key).matches()) {
                continue;
            }
            assertEquals(placeholders(english.getProperty(key)), placeholders(german.getProperty(key)), key);
        }
    }

    /** MessageFormat swallows a single apostrophe and everything it quotes. */
    @ParameterizedTest
    @ValueSource(strings = {"quantity", "problems"})
    void bundle_everySentence_doublesItsApostrophes(String bundle) throws IOException {
        for (String file : new String[] {bundle + ".properties", bundle + "_de.properties"}) {
            Properties texts = load(file);
            for (String key : texts.stringPropertyNames()) {
                String text = texts.getProperty(key);
                assertTrue(!LONE_APOSTROPHE.matcher(text).find(), file + " " + key);
                assertTrue(!text.isBlank(), file + " " + key);
            }
        }
    }

    private static Properties load(String name) throws IOException {
        Properties properties = new Properties();
        try (Reader reader =
                new InputStreamReader(Files.newInputStream(FOLDER.resolve(name)), StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        return properties;
    }

    private static SortedSet<String> placeholders(String text) {
        SortedSet<String> found = new TreeSet<>();
        Matcher matcher = PLACEHOLDER.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group());
        }
        return found;
    }
}
