package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * One word for one thing: what docs/glossary.md calls it. Other words for the same thing are found in lessons, and in
 * every German and English bundle where they cannot mean anything else.
 */
class WordListTest {

    /** Other words for a thing, by the word that the glossary has for it. */
    private static final Map<String, String> GERMAN_OTHERS = Map.of(
            "\\bMessspitzen?\\b", "Prüfspitze",
            "\\bEntladeschlussspannung\\b", "Abschaltspannung",
            "\\b[Vv]erdreht(?:e[nrsm]?)?\\b", "umgedreht",
            "\\bStoßgrenze\\b", "Pulsgrenze",
            "\\babblasen\\b", "Gas ablassen",
            "\\bauf gerissen\\b", "eingerissen",
            "\\bSpannungsabfall\\b", "Abfall");

    /** What lessons say in one way. */
    private static final Map<String, String> IN_LESSONS = Map.of(
            "\\b[Ww]ie viel (?:Volt|Ampere|Watt|Ohm)\\b", "wie viele",
            "\"Taster oben: ", "Der Taster ist oben.");

    private static final Map<String, String> ENGLISH_OTHERS = Map.of(
            "\\bamps meter\\b", "ammeter",
            "\\bvolts meter\\b", "voltmeter",
            "\\bsleeve of plastic\\b", "wrap",
            "\\bdischarge cut-off\\b", "cut-off",
            "\\bIt flows\\b", "what flows",
            "\\bheat arise\\b", "turn to heat",
            "\\bquite empty\\b", "completely empty");

    @Test
    void lessons_inBothLanguages_useOneWordForOneThing() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("lessons"))) {
            for (Path file : files.filter(it -> it.endsWith("lesson.yaml")).toList()) {
                String text = Files.readString(file);
                look(file, text, GERMAN_OTHERS, found);
                look(file, text, ENGLISH_OTHERS, found);
                look(file, text, IN_LESSONS, found);
            }
        }

        assertEquals(List.of(), found);
    }

    @Test
    void bundles_inGerman_useOneWordForOneThing() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/org/sagwise/texts"))) {
            for (Path file :
                    files.filter(it -> it.toString().endsWith("_de.properties")).toList()) {
                look(file, Files.readString(file), GERMAN_OTHERS, found);
            }
        }

        assertEquals(List.of(), found);
    }

    private static void look(Path file, String text, Map<String, String> others, List<String> found) {
        others.forEach((other, word) -> {
            Matcher matcher = Pattern.compile(other).matcher(text);
            while (matcher.find()) {
                int line = (int) text.substring(0, matcher.start()).lines().count();
                found.add(file + ":" + line + " " + matcher.group() + ", not " + word);
            }
        });
    }
}
