package org.sagwise.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Languages;

/** Holds the folder for people and what the program opens by name together. */
class DemoFilesTest {

    private static final Path FOLDER = Path.of("demo-scenarios");

    static List<String> names() {
        return DemoScenarios.names();
    }

    @Test
    void names_theFolder_holdsExactlyThese() throws IOException {
        var listed = new TreeSet<>(names().stream().map(DemoScenarios::fileName).toList());
        listed.add("texts.properties");
        Languages.all().stream().skip(1).forEach(code -> listed.add("texts_" + code + ".properties"));

        assertEquals(listed, filesIn(FOLDER));
    }

    @ParameterizedTest
    @MethodSource("names")
    void bytes_ofADemo_areThoseInTheFolder(String name) throws IOException {
        String file = DemoScenarios.fileName(name);
        byte[] english = Files.readAllBytes(FOLDER.resolve(file));

        assertArrayEquals(english, DemoScenarios.bytes(name));
        assertArrayEquals(english, DemoScenarios.bytes(name, Locale.FRENCH));
    }

    @ParameterizedTest
    @MethodSource("names")
    void demo_inGerman_isTheSameBenchInOtherWords(String name) {
        Scenario english = read(DemoScenarios.bytes(name));
        byte[] written = DemoScenarios.bytes(name, Locale.GERMANY);
        Scenario german = read(written);
        assertEquals(ScenarioWriter.write(german), new String(written, StandardCharsets.UTF_8));

        assertNotEquals(english.title(), german.title());
        assertNotEquals(english.about(), german.about());
        assertEquals(withoutWords(english), withoutWords(german));
        assertEquals(
                english.notes().stream().map(Note::on).toList(),
                german.notes().stream().map(Note::on).toList());
    }

    /** Nothing is left in English, and nothing is said of what is not there. */
    @Test
    void texts_ofEveryLanguage_haveTheWordsOfEveryDemoAndNoOthers() throws IOException {
        for (String code : Languages.all().subList(1, Languages.all().size())) {
            var texts = new Properties();
            texts.load(Files.newBufferedReader(FOLDER.resolve("texts_" + code + ".properties")));
            var needed = new TreeSet<String>();
            var possible = new TreeSet<String>();
            for (String name : names()) {
                Scenario demo = read(DemoScenarios.bytes(name));
                Stream.of("title", "about").forEach(key -> needed.add(name + "." + key));
                demo.notes().forEach(note -> needed.add(name + ".note." + note.on()));
                demo.parts()
                        .forEach(part ->
                                (part.keys().has("label") ? needed : possible).add(name + ".label." + part.id()));
            }
            var given = new TreeSet<>(texts.stringPropertyNames());
            assertTrue(given.containsAll(needed), () -> code + " lacks " + without(needed, given));
            needed.addAll(possible);
            assertEquals(new TreeSet<>(), without(given, needed), code);
        }
    }

    private static TreeSet<String> without(TreeSet<String> all, TreeSet<String> some) {
        var rest = new TreeSet<>(all);
        rest.removeAll(some);
        return rest;
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
