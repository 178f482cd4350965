package org.sagwise.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** German speaks to its readers with "du", and has one word for a thing. */
class GermanTest {

    private static final Pattern FORMAL =
            Pattern.compile("\\p{L}+en Sie\\b|\\b(wenn|bevor|falls|dass|ob) Sie \\p{Ll}+ \\p{Ll}+en\\b");

    private static final Pattern OTHER_WORDS =
            Pattern.compile("Werktisch|Regelplatine|Labornetz|\\bsichern\\b|\\bgesichert\\b");

    private static Stream<Path> german() throws IOException {
        return Stream.of(
                        files(Path.of("src/main/resources/org/sagwise/texts"), "_de.properties"),
                        files(Path.of("demo-scenarios"), "_de.properties"),
                        files(Path.of("lessons"), "lesson.yaml"),
                        files(Path.of("assets", "desktop"), ""))
                .flatMap(List::stream);
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    /** But for words that people write and the program understands: of these there may be many for a thing. */
    private static List<String> found(Pattern pattern) throws IOException {
        return german().filter(file -> !file.endsWith("trade-words_de.properties"))
                .flatMap(file ->
                        lines(file).filter(line -> pattern.matcher(line).find()).map(line -> file + ": " + line))
                .toList();
    }

    private static Stream<String> lines(Path file) {
        try {
            return Files.readAllLines(file).stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void texts_inGerman_addressReadersAsFriends() throws IOException {
        assertEquals(List.of(), found(FORMAL));
    }

    @Test
    void texts_inGerman_haveOneWordForAThing() throws IOException {
        assertEquals(List.of(), found(OTHER_WORDS));
    }
}
