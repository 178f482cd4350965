package org.sagwise.ui.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.NextStep;
import org.sagwise.scenario.Scenario;

/** What stands on the bench when computing it fails, for whatever reason. */
class BenchModelTest {

    private static final String BAD = "not to be computed";

    private final Catalogue catalogue = CatalogueLoader.builtIn();
    private final Scenario pair = new ScenarioReader(catalogue)
            .read(DemoScenarios.bytes("two-in-a-row"))
            .scenario()
            .orElseThrow();
    private final BenchModel bench = new BenchModel(this::assess, pair);

    private Assessment assess(Scenario scenario) {
        if (scenario.title().equals(BAD)) {
            throw new IllegalStateException("planted");
        }
        return Assessment.of(scenario, catalogue);
    }

    @Test
    void open_whereComputingFails_leavesNoNumberOfTheOneBefore() {
        Scenario bad = pair.withTitle(BAD);
        assertThrows(IllegalStateException.class, () -> bench.open(bad));

        assertEquals(bad, bench.scenario());
        assertFalse(bench.judgedProperty().get());
        assertTrue(bench.assessment().readings().cells().isEmpty());
        assertTrue(bench.assessment().staircase().steps().isEmpty());
        assertTrue(bench.assessment().cautions().isEmpty());
        assertTrue(bench.spotlight().lit().isNothing());
    }

    @Test
    void open_afterOneThatFailed_isJudgedAgain() {
        assertThrows(IllegalStateException.class, () -> bench.open(pair.withTitle(BAD)));
        bench.button().press(FireButtonState.Hold.KEY);
        assertFalse(bench.judgedProperty().get());
        bench.open(pair);

        assertTrue(bench.judgedProperty().get());
        assertEquals(2, bench.assessment().readings().cells().size());
        assertEquals(NextStep.NONE, bench.nextStepProperty().get());
    }

    @Test
    void edit_whereComputingFails_isNotMade() {
        assertThrows(IllegalStateException.class, () -> bench.edit("spoil", now -> now.withTitle(BAD)));

        assertEquals(pair, bench.scenario());
        assertTrue(bench.judgedProperty().get());
        assertEquals(2, bench.assessment().readings().cells().size());
    }
}
