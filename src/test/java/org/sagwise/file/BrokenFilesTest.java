package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.ProblemTexts;
import org.sagwise.text.Position;

/**
 * Every file of the folder {@code broken} has one defect, named by the file; beside it lies what a
 * person is told: place, line and column, sentence. One file has many defects.
 */
class BrokenFilesTest {

    private static final Path FOLDER = Path.of("src/test/resources/broken");

    private final ScenarioReader reader = new ScenarioReader(CatalogueLoader.builtIn());

    static List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".json"))
                    .map(name -> name.substring(0, name.length() - ".json".length()))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void read_brokenFile_saysWhatIsWrongAndWhere(String name) throws IOException {
        Loaded loaded = reader.read(Files.readAllBytes(FOLDER.resolve(name + ".json")));
        Loaded.Refused refused = assertInstanceOf(Loaded.Refused.class, loaded);
        String told =
                String.join("\n", refused.problems().stream().map(this::line).toList());
        assertEquals(Files.readString(FOLDER.resolve(name + ".expected")).strip(), told);
    }

    @Test
    void names_folder_holdsPairs() throws IOException {
        assertTrue(names().size() > 100);
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertEquals(2 * names().size(), files.count());
        }
    }

    private String line(Finding found) {
        String place = ProblemTexts.shown(found.place());
        return (place.isEmpty() ? "-" : place)
                + " | "
                + found.position().map(Position::toString).orElse("whole file")
                + " | "
                + found.sentence(Locale.ENGLISH);
    }
}
