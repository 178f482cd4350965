package org.sagwise.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Held against {@link Properties}, whose format it reads. */
class PropertyLinesTest {

    private static Map<String, String> read(String text) {
        Map<String, String> read = new HashMap<>();
        PropertyLines.of(text, read::put);
        return read;
    }

    private static Map<String, String> asTheJdk(String text) {
        Properties lines = new Properties();
        try {
            lines.load(new StringReader(text));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        Map<String, String> read = new HashMap<>();
        lines.forEach((key, value) -> read.put((String) key, (String) value));
        return read;
    }

    @Test
    void of_everyBundle_readsWhatTheJdkReads() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/org/sagwise/texts"))) {
            List<Path> bundles =
                    files.filter(it -> it.toString().endsWith(".properties")).toList();
            for (Path bundle : bundles) {
                String text = Files.readString(bundle);
                assertEquals(asTheJdk(text), read(text), bundle.toString());
            }
        }
    }

    @Property(tries = 500)
    void of_anyText_readsWhatTheJdkReads(@ForAll("texts") String text) {
        assertEquals(asTheJdk(text), read(text));
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.of(
                        "a", "b", "=", ":", " ", "\t", "\n", "\r", "\r\n", "#", "!", "\\\\", "\\n", "\\=", "\\ ", "\\#",
                        "\\u00b5", "ü")
                .list()
                .ofMaxSize(20)
                .map(signs -> String.join("", signs));
    }
}
