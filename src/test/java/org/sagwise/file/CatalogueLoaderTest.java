package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.file.CatalogueDefect.Problem;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Fault;
import org.sagwise.scenario.Finding;

class CatalogueLoaderTest {

    private static final String CELL = """
            [{"id": "inr18650-2500-20A", "title": {"en": "T", "de": "T"},
              "about": {"en": "A", "de": "A"}, "chemistry": "INR", "format": "18650",
              "internal_mohm": 20, "capacity_mAh": 2500, "limit_A": 20, "charge_limit_A": 2,
              "source": "typical"}]
            """;

    @Test
    void read_builtIn_hasNoDefects() {
        CatalogueReading reading = CatalogueLoader.read(CatalogueLoader.builtInSource());

        assertEquals(List.of(), reading.defects());
        assertTrue(reading.catalogue().isPresent());
    }

    @Test
    void builtIn_eachKind_holdsTheSameIdsAsReadAtOnce() {
        Catalogue atOnce = CatalogueLoader.read(CatalogueLoader.builtInSource())
                .catalogue()
                .get();
        Catalogue builtIn = CatalogueLoader.builtIn();

        assertEquals(ids(atOnce).toList(), ids(builtIn).toList());
        assertSame(builtIn, CatalogueLoader.builtIn());
    }

    @Test
    void builtIn_everyText_differsBetweenLanguagesUnlessItIsAName() {
        entries(CatalogueLoader.builtIn())
                .forEach(entry -> assertNotEquals(
                        entry.card().about().in(Locale.ENGLISH),
                        entry.card().about().in(Locale.GERMAN),
                        entry.id()));
    }

    @Test
    void builtIn_everyEntry_saysWhereItsNumbersComeFrom() {
        entries(CatalogueLoader.builtIn())
                .forEach(entry -> assertFalse(entry.card().sources().isEmpty(), entry.id()));
    }

    @Test
    void read_missingFile_namesIt() {
        CatalogueDefect defect = onlyDefect(Map.of(), "cells.json");

        assertEquals(Problem.NOT_FOUND, defect.problem());
        assertEquals("cells.json", defect.file());
    }

    @Test
    void read_brokenJson_namesLineAndColumn() {
        CatalogueDefect defect = onlyDefect(Map.of("cells.json", "[\n  {\"id\": }]"));

        assertEquals(org.sagwise.scenario.Problem.NOT_JSON, defect.problem());
        assertEquals(2, defect.finding().position().orElseThrow().line());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"internal_mohm\": 20,   | '' | MISSING_KEY | [0]",
                "\"internal_mohm\": 20    | \"internal_mohm\": \"20\" | WRONG_TYPE |" + " [0].internal_mohm",
                "\"internal_mohm\": 20    | \"internal_mohm\": 1e999 | NOT_FINITE |" + " [0].internal_mohm",
                "\"internal_mohm\": 20    | \"internal_mohm\": -1 | OUT_OF_RANGE | [0].internal_mohm",
                "\"limit_A\": 20          | \"limit_A\": 0 | OUT_OF_RANGE | [0].limit_A",
                "\"limit_A\": 20          | \"limit_A\": 20, \"colour\": 1 | UNKNOWN_KEY |" + " [0].colour",
                "\"INR\"                  | \"INX\" | NOT_A_CHOICE | [0].chemistry",
                "\"INR\"                  | 7 | WRONG_TYPE | [0].chemistry",
                "inr18650-2500-20A        | inr 18650 | BAD_ID | [0].id",
                "\"de\": \"T\"            | \"de\": \" \" | ONE_LANGUAGE | [0].title",
                "\"en\": \"A\",           | '' | MISSING_KEY | [0].about",
                "\"source\": \"typical\"  | \"source\": \"rumour\" | NOT_A_CHOICE | [0].source",
                "\"typical\"}             | \"typical\", \"sources\": {\"mass_g\": \"typical\"}} |"
                        + " SOURCE_OF_NOTHING | [0].sources.mass_g",
                "\"limit_A\": 20          | \"limit_A\": 20, \"cutoff_V\": 5 | UPSIDE_DOWN |" + " [0].cutoff_V",
                "\"limit_A\": 20          | \"limit_A\": 20, \"pulse_A\": 10, \"pulse_s\": 1 |"
                        + " UPSIDE_DOWN | [0].pulse_A",
                "\"limit_A\": 20          | \"limit_A\": 20, \"guard\": 8 | WRONG_TYPE |" + " [0].guard"
            })
    void read_defectOfACell_namesKeyAndPlace(String sound, String broken, String problem, String place) {
        String cell = CELL.replace(sound, broken);
        assertNotEquals(CELL, cell);

        CatalogueDefect defect = firstDefect(Map.of("cells.json", cell));

        assertEquals(problem, defect.problem().toString());
        assertTrue(defect.place().startsWith(place), defect.place());
    }

    @Test
    void read_sameKeyTwice_namesItsLine() {
        String cell = CELL.replace("\"limit_A\": 20", "\"limit_A\": 20, \"limit_A\": 30");

        CatalogueDefect defect = onlyDefect(Map.of("cells.json", cell));

        assertEquals(org.sagwise.scenario.Problem.DUPLICATE_KEY, defect.problem());
        assertEquals(3, defect.finding().position().orElseThrow().line());
    }

    @Test
    void read_numbersWithoutSource_namesEach() {
        String cell = CELL.replace(",\n  \"source\": \"typical\"", "");

        List<CatalogueDefect> defects = defects(Map.of("cells.json", cell));

        assertEquals(
                List.of("[0].internal_mohm", "[0].capacity_mAh", "[0].limit_A", "[0].charge_limit_A"),
                defects.stream()
                        .filter(defect -> defect.problem() == Problem.NO_SOURCE)
                        .map(CatalogueDefect::place)
                        .toList());
    }

    @Test
    void read_sameIdTwice_namesTheSecond() {
        String entry = CELL.strip().substring(1, CELL.strip().length() - 1);

        CatalogueDefect defect = onlyDefect(Map.of("cells.json", "[" + entry + "," + entry + "]"));

        assertEquals(Problem.TWICE, defect.problem());
        assertEquals("[1].id", defect.place());
    }

    @Test
    void read_severalDefectsInSeveralFiles_reportsAll() {
        List<CatalogueDefect> defects = defects(Map.of(
                "cells.json", CELL.replace("2500,", "0,").replace("INR\"", "X\""),
                "fuses.json", "{}",
                "boards.json", "[3]"));

        assertEquals(
                List.of("cells.json", "cells.json", "fuses.json", "boards.json"),
                defects.stream().map(CatalogueDefect::file).toList());
    }

    @Test
    void read_coilWithTwoDescriptions_asksForOne() {
        String coil = """
                [{"id": "c", "title": {"en": "T", "de": "T"}, "about": {"en": "A", "de": "A"},
                  "ohm": 1, "wire": {"alloy": "none", "awg": 24, "wraps": 5, "inner_mm": 3},
                  "source": "typical"}]
                """;

        List<Fault> problems = defects(Map.of("coils.json", coil)).stream()
                .map(CatalogueDefect::problem)
                .toList();

        assertEquals(List.of(org.sagwise.scenario.Problem.UNKNOWN_ALLOY, org.sagwise.scenario.Problem.CLASH), problems);
    }

    @Test
    void describe_unknownValue_offersWhatIsKnown() {
        CatalogueDefect defect = firstDefect(Map.of("cells.json", CELL.replace("\"18650\"", "\"18560\"")));

        assertEquals(
                "cells.json, [0].format (line 2, column 66): “18560” is no choice here. Right would be:"
                        + " 18350, 18650, 20700, 21700, 26650.",
                defect.describe(Locale.ENGLISH));
    }

    @ParameterizedTest
    @EnumSource(Problem.class)
    void describe_everyProblem_hasATextOfItsOwnInBothLanguages(Problem problem) {
        CatalogueDefect defect = new CatalogueDefect("f.json", Finding.of("[0]", problem, "key", "was", "known"));

        String english = defect.describe(Locale.ENGLISH);
        String german = defect.describe(Locale.GERMAN);

        assertNotEquals(english, german);
        assertFalse(english.matches(".*\\{\\d}.*") || german.matches(".*\\{\\d}.*"));
    }

    @Test
    void builtIn_brokenFile_failsWithTheDefect() {
        CatalogueFiles files = new CatalogueFiles(name -> Optional.empty(), JsonDocument::read);
        files.texts("sources.json");

        IllegalStateException failure =
                assertThrows(IllegalStateException.class, () -> CatalogueLoader.insistOn(files));

        assertTrue(failure.getMessage().startsWith("sources.json: the file is missing"));
    }

    @Test
    void read_unreadableFile_saysWhy() {
        CatalogueSource source = name -> {
            if (name.equals("cells.json")) {
                throw new IOException("disk on fire");
            }
            return stream(sound().get(name));
        };

        CatalogueDefect defect = CatalogueLoader.read(source).defects().get(0);

        assertEquals(Problem.NOT_READABLE, defect.problem());
        assertTrue(defect.describe(Locale.ENGLISH).contains("disk on fire"));
    }

    private static Stream<CatalogueEntry> entries(Catalogue catalogue) {
        return Stream.concat(
                        Stream.of(
                                catalogue.chemistries(), catalogue.alloys(), catalogue.contacts(), catalogue.jumpers()),
                        Stream.of(PartKind.values()).map(catalogue::models))
                .flatMap(entries -> entries.all().stream());
    }

    private static Stream<String> ids(Catalogue catalogue) {
        return entries(catalogue).map(CatalogueEntry::id);
    }

    /** The least catalogue that is sound: one source, one cell, nothing else. */
    private static Map<String, String> sound() {
        Map<String, String> files = new HashMap<>();
        List.of("chemistries", "alloys", "contacts", "jumpers")
                .forEach(material -> files.put(material + ".json", "[]"));
        Stream.of(PartKind.values())
                .flatMap(kind -> kind.descriptor().family().stream())
                .forEach(family -> files.put(family.file(), "[]"));
        files.put("cells.json", CELL);
        files.put("sources.json", "{\"typical\": {\"en\": \"Typical.\", \"de\": \"Üblich.\"}}");
        return files;
    }

    private static Optional<InputStream> stream(String text) {
        return Optional.ofNullable(text)
                .map(present -> present.getBytes(StandardCharsets.UTF_8))
                .map(ByteArrayInputStream::new);
    }

    private static List<CatalogueDefect> defects(Map<String, String> changed, String... removed) {
        Map<String, String> files = sound();
        assertEquals(
                List.of(), CatalogueLoader.read(name -> stream(files.get(name))).defects());
        files.putAll(changed);
        List.of(removed).forEach(files::remove);
        return CatalogueLoader.read(name -> stream(files.get(name))).defects();
    }

    private static CatalogueDefect firstDefect(Map<String, String> changed) {
        return defects(changed).get(0);
    }

    private static CatalogueDefect onlyDefect(Map<String, String> changed, String... removed) {
        List<CatalogueDefect> defects = defects(changed, removed);
        assertEquals(1, defects.size(), defects.toString());
        return defects.get(0);
    }
}
