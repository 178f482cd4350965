package org.sagwise.ui.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.interaction.Selection;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.text.Wording;

/** The bench in words, for who hears it or goes through it by keys. */
class ReadingsRowTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    static List<String> demos() {
        return DemoScenarios.names();
    }

    private static Scenario demo(String name) {
        return new ScenarioReader(CATALOGUE)
                .read(DemoScenarios.bytes(name))
                .scenario()
                .orElseThrow();
    }

    private static List<ReadingsRow> rows(Scenario scenario, Locale locale) {
        return ReadingsRow.of(Assessment.of(scenario, CATALOGUE), Wording.in(locale));
    }

    /**
     * Ohm's law by hand: 30 mΩ inside, 3 mΩ of button, 300 mΩ of coil, and twice 240 mm of gauge 18
     * (20.95 mΩ/m at 20 °C, ASTM B258, 2 % more at 25 °C) with 12 mΩ of clips make 367.3 mΩ; 4.14 V
     * drive 11.27 A through them.
     */
    @Test
    void of_benchCheckHeld_sayWhatOhmsLawSays() {
        List<ReadingsRow> rows = rows(demo("bench-check").pressed(), Locale.ENGLISH);

        ReadingsRow cell = rows.get(0);
        assertEquals(List.of("A", "3.80 V", "11.3 A", "3.81 W"), numbers(cell));
        assertEquals("at rest 4.14 V, sag 0.34 V, limit 20 A", cell.remark());
        assertEquals(List.of("fire button", "33.8 mV", "11.3 A", "0.381 W"), numbers(rows.get(1)));
        assertEquals(List.of("coil", "3.38 V", "11.3 A", "38.1 W"), numbers(rows.get(2)));
        assertEquals("working", rows.get(2).remark());
        ReadingsRow wire = rows.get(3);
        assertEquals(List.of("0.19 V", "11.3 A", "2.18 W"), numbers(wire).subList(1, 4));
        assertEquals("17.1 mΩ", wire.remark());
    }

    private static List<String> numbers(ReadingsRow row) {
        return List.of(row.name(), row.volts(), row.amps(), row.watts());
    }

    @Test
    void of_benchCheckLetGo_saysThatNothingFlows() {
        List<ReadingsRow> rows = rows(demo("bench-check").released(), Locale.ENGLISH);

        assertEquals("open", rows.get(1).remark());
        assertEquals("0.00 A", rows.get(2).amps());
        assertEquals("4.14 V", rows.get(0).volts());
    }

    @Test
    void of_benchInGerman_speaksGerman() {
        ReadingsRow cell = rows(demo("bench-check").pressed(), Locale.GERMAN).get(0);

        assertEquals("3,80 V", cell.volts());
        assertEquals("in Ruhe 4,14 V, Einbruch 0,34 V, Grenze 20 A", cell.remark());
    }

    /** Who cannot see the bench must miss no part and no joint, and every line points at its own. */
    @ParameterizedTest
    @MethodSource("demos")
    void of_anyDemo_namesEveryPartAndEveryJointOnce(String name) {
        Scenario scenario = demo(name);
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            List<ReadingsRow> rows = rows(scenario.pressed(), locale);

            Stream<Selection> parts = scenario.parts().stream().map(part -> Selection.part(part.id()));
            Stream<Selection> links = Stream.iterate(
                            0, i -> i < scenario.links().size(), i -> i + 1)
                    .map(Selection::link);
            assertEquals(
                    Stream.concat(parts, links).toList(),
                    rows.stream().map(ReadingsRow::lit).toList());
            for (ReadingsRow row : rows) {
                assertFalse(row.name().isBlank());
                assertFalse(row.kind().isBlank(), row.name());
                assertFalse(row.remark().isBlank(), row.name());
                assertTrue(row.amps().endsWith("A") || row.amps().contains("–"), row.toString());
            }
        }
    }
}
