package org.sagwise.report.health;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.reading.Bench;
import org.sagwise.text.Signs;

/** Ohms beside what is usual. Thresholds are ours; the spans are the catalogue's, typical. */
class HealthTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static List<Health> health(String cell, String button, String jointMohm) {
        return Health.of(bench(cell, button, jointMohm));
    }

    private static Bench bench(String cell, String button, String jointMohm) {
        String json = """
                {"sagwise": 1, "parts": [
                  {"id": "A", "kind": "cell", "charge": 0.9, CELL},
                  {"id": "fire", "kind": "switch" BUTTON},
                  {"id": "coil", "kind": "coil", "ohm": 1}],
                 "links": [
                  {"from": "A.+", "to": "fire.1", "contact_mohm": JOINT},
                  {"from": "fire.2", "to": "coil.1", "ideal": true},
                  {"from": "coil.2", "to": "A.-", "ideal": true}]}
                """.replace("CELL", cell).replace("BUTTON", button).replace("JOINT", jointMohm);
        var scenario = new ScenarioReader(CATALOGUE)
                .read(json.getBytes(StandardCharsets.UTF_8))
                .scenario()
                .orElseThrow();
        return Bench.of(scenario, CATALOGUE);
    }

    private static String measured(int mohm) {
        return "\"internal_mohm\": " + mohm + ", \"capacity_mAh\": 2500, \"limit_A\": 20";
    }

    /** Sound 18650 cells of the catalogue have 16 to 65 mΩ. */
    @ParameterizedTest
    @CsvSource({"7, LOW", "9, USUAL", "97, USUAL", "98, HIGH", "195, HIGH", "196, BAD"})
    void cell_ofMeasuredOhms_isJudgedByCellsOfItsSize(int mohm, Health.Verdict verdict) {
        Health cell = health(measured(mohm), "", "4").get(0);
        assertEquals(verdict, cell.verdict());
        assertEquals(Health.Origin.GIVEN, cell.origin());
    }

    /** Half worn: the model's 22 mΩ and three times as much. */
    @ParameterizedTest
    @CsvSource({"33, USUAL", "34, HIGH", "66, HIGH", "67, BAD"})
    void cell_ofAModel_isJudgedByItsModel(int mohm, Health.Verdict verdict) {
        String model = "\"model\": \"inr18650-2500-20A\", \"internal_mohm\": " + mohm;
        assertEquals(verdict, health(model, "", "4").get(0).verdict());
        String own = "\"model\": \"inr18650-2500-20A\"";
        assertEquals(Health.Origin.CATALOGUE, health(own, "", "4").get(0).origin());
    }

    /** Neither cold nor a low charge nor a guard wears a cell; lost health does. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "\"temperature_C\": -15; USUAL; true",
                "\"guard\": {\"trip_A\": 8, \"trip_s\": 0.02, \"mohm\": 40}; USUAL; true",
                "\"temperature_C\": 25; USUAL; false",
                "\"health\": 0.8; HIGH; false",
                "\"temperature_C\": -15, \"health\": 0.55; BAD; false"
            })
    void cell_ofAModel_isJudgedByWearAlone(String state, Health.Verdict verdict, boolean highForNow) {
        Health cell =
                health("\"model\": \"inr18650-2500-20A\", " + state, "", "4").get(0);
        assertEquals(verdict, cell.verdict());
        assertEquals(highForNow, cell.isHighForNow());
    }

    @ParameterizedTest
    @CsvSource({"10, USUAL", "11, HIGH", "30, HIGH", "31, BAD"})
    void jointAndButton_areJudgedByClips(int mohm, Health.Verdict verdict) {
        List<Health> all = health(measured(22), ", \"closed_mohm\": " + mohm, String.valueOf(mohm));
        assertEquals(verdict, all.get(1).verdict(), "button");
        assertEquals(verdict, all.get(2).verdict(), "joint");
    }

    @Test
    void button_ofWhichNobodySaidTheOhms_isMarkedAsAssumed() {
        assertEquals(Health.Origin.ASSUMED, health(measured(22), "", "4").get(1).origin());
    }

    @Test
    void button_ofAModel_isMarkedAsOfTheCatalogue() {
        Health button = health(measured(22), ", \"model\": \"button\"", "4").get(1);
        assertEquals(Health.Origin.CATALOGUE, button.origin());
    }

    @Test
    void card_ofPartOrLink_saysItsRowAndWhatItsMarkMeans() {
        HealthWords words = new HealthWords(bench(measured(70), "", "40"), Locale.ENGLISH, Signs.PRINT);
        assertEquals(List.of("Resistance 70 mΩ, usual 16 mΩ to 65 mΩ: like new"), words.ofPart("A"));
        assertEquals(
                List.of("Resistance 3 mΩ *, usual to 10 mΩ: sound", "* assumed: nobody said it"), words.ofPart("fire"));
        assertEquals(List.of(), words.ofPart("coil"));
        assertEquals(List.of("Contact 40 mΩ, usual to 10 mΩ: loose or dirty"), words.ofLink(0));
        assertEquals(List.of(), words.ofLink(1), "an ideal joint has no ohms to judge");
    }

    @Test
    void words_ofEveryDemo_markWhatWasNotMeasured() {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            for (String name : DemoScenarios.names()) {
                var scenario = new ScenarioReader(CATALOGUE)
                        .read(DemoScenarios.bytes(name, locale))
                        .scenario()
                        .orElseThrow();
                HealthWords words = new HealthWords(Bench.of(scenario, CATALOGUE), locale, Signs.PRINT);
                boolean marked =
                        words.rows().stream().anyMatch(row -> row.get(1).endsWith("°"));
                assertEquals(marked, words.marks().stream().anyMatch(mark -> mark.startsWith("°")), name);
                assertTrue(words.rows().stream()
                        .allMatch(row -> row.size() == words.heads().size()));
            }
        }
    }
}
