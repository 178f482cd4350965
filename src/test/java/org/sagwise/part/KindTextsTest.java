package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bundle that all others share has the words of every kind of part, and of no other. */
class KindTextsTest {

    private static final Path FILE = Path.of("src/main/resources/org/sagwise/texts/kinds.properties");

    private static Set<String> keys() throws IOException {
        Properties texts = new Properties();
        try (Reader reader = new InputStreamReader(Files.newInputStream(FILE), StandardCharsets.UTF_8)) {
            texts.load(reader);
        }
        return texts.stringPropertyNames();
    }

    @Test
    void bundle_namesOfKinds_areThoseThatThereAre() throws IOException {
        Set<String> wanted = Stream.of("kind.", "family.", "add.", "name.", "name.only.", "of.only.")
                .flatMap(stem -> PartKind.words().stream().map(word -> stem + word))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> there = keys().stream()
                .filter(key -> key.matches("(kind|family|add|name|of)\\..*"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(wanted, there);
    }
}
