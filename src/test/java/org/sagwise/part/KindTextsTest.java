package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.part.key.KeySpec;

/** The bundle that all others share has the words of every kind of part, and of no other. */
class KindTextsTest {

    private static final Path FOLDER = Path.of("src/main/resources/org/sagwise/texts");

    private static Properties texts(String language) throws IOException {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(FOLDER.resolve("kinds" + language + ".properties"))) {
            texts.load(reader);
        }
        return texts;
    }

    /** A place that no key has would be filled in when somebody explains such a part, and break it. */
    @ParameterizedTest
    @ValueSource(strings = {"", "_de"})
    void bundle_whatIsTold_isOfItsKeys(String language) throws IOException {
        for (PartKind kind : PartKind.values()) {
            Set<String> names = kind.keys().stream().map(KeySpec::name).collect(Collectors.toSet());
            texts(language).forEach((key, text) -> {
                if (key.toString().matches("told\\." + kind.word() + "(\\..*)?")) {
                    Matcher place = Pattern.compile("\\{(\\w+)}").matcher(text.toString());
                    assertTrue(place.results().allMatch(it -> names.contains(it.group(1))), key + ": " + text);
                }
            });
        }
    }

    @Test
    void bundle_namesOfKinds_areThoseThatThereAre() throws IOException {
        Set<String> wanted = Stream.of("kind.", "family.", "add.", "name.", "name.only.", "of.only.")
                .flatMap(stem -> PartKind.words().stream().map(word -> stem + word))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> there = texts("").stringPropertyNames().stream()
                .filter(key -> key.matches("(kind|family|add|name|of)\\..*"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(wanted, there);
    }
}
