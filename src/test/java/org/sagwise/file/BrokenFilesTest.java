package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.ProblemTexts;
import org.sagwise.text.Position;

/** Every defect of the list is found, and nothing else: what it is and where. Each kind says so in words. */
class BrokenFilesTest {

    private final ScenarioReader reader = new ScenarioReader(CatalogueLoader.builtIn());

    static List<Defect> defects() throws IOException {
        return Defect.all();
    }

    @ParameterizedTest
    @MethodSource("defects")
    void read_fileWithADefect_findsWhatAndWhere(Defect defect) throws IOException {
        assertEquals(
                String.join("\n", defect.found()),
                problems(defect).stream().map(BrokenFilesTest::line).collect(Collectors.joining("\n")));
    }

    @Test
    void read_benchThatDefectsAreMadeOf_isSound() throws IOException {
        assertInstanceOf(Loaded.Ok.class, reader.read(Files.readAllBytes(Defect.BENCH)));
        assertTrue(Defect.all().size() > 130);
    }

    @Test
    void wholeFiles_areThoseOfTheList() throws IOException {
        Set<Path> listed = new TreeSet<>();
        Defect.all().stream()
                .filter(defect -> defect.edits().isEmpty())
                .map(Defect::whole)
                .forEach(listed::add);
        try (Stream<Path> files = Files.list(Defect.FOLDER.resolve("whole"))) {
            assertEquals(listed, files.collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    @Test
    void sentence_ofEachKindOfProblem_isWordedAsWritten() throws IOException {
        Map<String, String> said = new TreeMap<>();
        Set<String> codes = new TreeSet<>();
        for (Defect defect : Defect.all()) {
            for (Finding found : problems(defect)) {
                said.put(what(found), printable(found.sentence(Locale.ENGLISH)));
                codes.add(found.problem().name());
            }
        }
        Map<String, String> written = wording();
        said.keySet().retainAll(written.keySet());

        assertEquals(new TreeMap<>(written), said);
        written.keySet().forEach(what -> codes.remove(what.split(" ")[0]));
        assertEquals(Set.of(), codes, "kinds whose words nobody wrote down");
    }

    private static Map<String, String> wording() throws IOException {
        Map<String, String> wording = new TreeMap<>();
        String what = "";
        for (String line : Defect.lines("wording.txt")) {
            if (line.startsWith("> ")) {
                wording.put(what, line.substring(2));
            } else if (!line.startsWith("#")) {
                what = line;
            }
        }
        return wording;
    }

    private List<Finding> problems(Defect defect) throws IOException {
        return assertInstanceOf(Loaded.Refused.class, reader.read(defect.file()))
                .problems();
    }

    private static String line(Finding found) {
        String place = ProblemTexts.shown(found.place());
        return (place.isEmpty() ? "-" : place)
                + " | "
                + found.position().map(Position::toString).orElse("whole file")
                + " | "
                + what(found);
    }

    private static String what(Finding found) {
        List<String> parts = new ArrayList<>(List.of(found.problem().name()));
        found.details()
                .forEach(detail -> parts.add(
                        detail.isEmpty() || detail.isBlank() && detail.charAt(0) == 32 ? "\"\"" : printable(detail)));
        return String.join(" | ", parts).strip();
    }

    private static String printable(String text) {
        return text.codePoints()
                .mapToObj(sign -> Character.isISOControl(sign) || Character.getType(sign) == Character.SURROGATE
                        ? String.format("\\u%04x", sign)
                        : Character.toString(sign))
                .collect(Collectors.joining());
    }
}
