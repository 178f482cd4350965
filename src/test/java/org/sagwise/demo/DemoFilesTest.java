package org.sagwise.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Scenario;

/** Holds the folder for people and what the program opens by name together. */
class DemoFilesTest {

    private static final Path FOLDER = Path.of("demo-scenarios");

    static List<String> names() {
        return DemoScenarios.names();
    }

    @Test
    void names_theFolder_holdsExactlyThese() throws IOException {
        var listed = new TreeSet<>(names().stream().map(DemoScenarios::fileName).toList());

        assertEquals(listed, filesIn(FOLDER));
        assertEquals(listed, filesIn(FOLDER.resolve("de")));
    }

    @ParameterizedTest
    @MethodSource("names")
    void bytes_ofADemo_areThoseInTheFolder(String name) throws IOException {
        String file = DemoScenarios.fileName(name);
        byte[] english = Files.readAllBytes(FOLDER.resolve(file));
        byte[] german = Files.readAllBytes(FOLDER.resolve("de").resolve(file));

        assertArrayEquals(english, DemoScenarios.bytes(name));
        assertArrayEquals(german, DemoScenarios.bytes(name, Locale.GERMANY));
        assertArrayEquals(english, DemoScenarios.bytes(name, Locale.FRENCH));
    }

    @ParameterizedTest
    @MethodSource("names")
    void demo_inGerman_isTheSameBenchInOtherWords(String name) {
        Scenario english = read(DemoScenarios.bytes(name));
        Scenario german = read(DemoScenarios.bytes(name, Locale.GERMAN));

        assertNotEquals(english.title(), german.title());
        assertNotEquals(english.about(), german.about());
        assertEquals(withoutWords(english), withoutWords(german));
        assertEquals(
                english.notes().stream().map(Note::on).toList(),
                german.notes().stream().map(Note::on).toList());
    }

    private static Scenario read(byte[] bytes) {
        return new ScenarioReader(CatalogueLoader.builtIn())
                .read(bytes)
                .scenario()
                .orElseThrow();
    }

    private static Scenario withoutWords(Scenario scenario) {
        return scenario.withTitle("")
                .withAbout("")
                .withNotes(List.of())
                .withParts(scenario.parts().stream()
                        .map(part -> part.without("label"))
                        .toList());
    }

    @Test
    void opening_isAmongTheDemos() {
        assertTrue(names().contains(DemoScenarios.OPENING));
    }

    private static TreeSet<String> filesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> file.getFileName().toString())
                    .collect(TreeSet::new, TreeSet::add, TreeSet::addAll);
        }
    }
}
