package org.sagwise.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Hazards;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Part;

/** Which cells nobody should use again once a bench was built as drawn. */
class SpentCellsTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static Assessment demo(String name) {
        return Assessment.of(
                new ScenarioReader(CATALOGUE)
                        .read(DemoScenarios.bytes(name))
                        .scenario()
                        .orElseThrow(),
                CATALOGUE);
    }

    private static String spent(Assessment assessment) {
        return Hazards.spentCells(assessment.scenario(), assessment.cautions()).stream()
                .map(Part::id)
                .collect(Collectors.joining(" "));
    }

    /** The flat cell is charged beyond its limit; the full one beside it only gives. */
    @ParameterizedTest
    @CsvSource({
        "side-by-side-one-reversed, A B",
        "row-of-three-one-reversed, B",
        "flat-beside-full, B",
        "torn-wrap, A B",
        "paper-clip-across-the-coil, A",
        "meter-left-on-amps, A",
        "re-wrapped-cell, A"
    })
    void of_benchThatRuinsCells_namesThem(String demo, String expected) {
        assertEquals(expected, spent(demo(demo)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"row-of-two-one-reversed", "two-cells-side-by-side", "thin-wire"})
    void of_benchThatRuinsNone_isEmpty(String demo) {
        assertEquals("", spent(demo(demo)));
    }

    /** Where all the cells of a caution are past use, its own advice says so, in both languages. */
    @Test
    void advice_ofAShort_saysNeverAgain() {
        for (String name : new String[] {"side-by-side-one-reversed", "paper-clip-across-the-coil", "torn-wrap"}) {
            Assessment assessment = demo(name);
            String english = CautionTexts.advice(assessment.cautions().get(0), Locale.ENGLISH);
            String german = CautionTexts.advice(assessment.cautions().get(0), Locale.GERMAN);
            assertTrue(english.matches("(?s).*(again|disposal).*"), english);
            assertTrue(german.matches("(?s).*(nie wieder|Batterieannahme).*"), german);
            assertFalse(english.startsWith("Take the cells out first"), english);
        }
    }
}
