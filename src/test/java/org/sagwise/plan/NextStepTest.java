package org.sagwise.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** What a bench lacks that is being built. */
class NextStepTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static final Part CELL = Part.of("A", PartKind.CELL, "model", "inr18650-2500-20A");
    private static final Part COIL = Part.of("coil", PartKind.COIL, "ohm", 1.0);
    private static final Part BUTTON = Part.of("fire", PartKind.SWITCH);

    private static NextStep after(Part... parts) {
        return NextStep.of(Bench.of(Scenario.empty().withParts(List.of(parts)), CATALOGUE));
    }

    private static Scenario demo(String name) {
        return new ScenarioReader(CATALOGUE)
                .read(DemoScenarios.bytes(name))
                .scenario()
                .orElseThrow();
    }

    /** Those on which nothing is wrong. */
    static Stream<String> soundDemos() {
        return DemoScenarios.names().stream()
                .filter(name -> Assessment.of(demo(name), CATALOGUE).cautions().isEmpty());
    }

    @Test
    void of_partsOneByOne_asksForTheNext() {
        assertEquals(NextStep.SOURCE, after());
        assertEquals(NextStep.SOURCE, after(COIL, BUTTON));
        assertEquals(NextStep.LOAD, after(CELL));
        assertEquals(NextStep.SWITCH, after(CELL, COIL));
        assertEquals(NextStep.JOINTS, after(CELL, COIL, BUTTON));
    }

    @ParameterizedTest
    @MethodSource("soundDemos")
    void of_benchThatWorks_asksForNothing(String name) {
        assertEquals(NextStep.NONE, NextStep.of(Bench.of(demo(name), CATALOGUE)));
    }

    @ParameterizedTest
    @MethodSource("soundDemos")
    void of_benchWithItsLinksCut_asksForJoints(String name) {
        Scenario loose = demo(name).withLinks(List.of());

        assertEquals(NextStep.JOINTS, NextStep.of(Bench.of(loose, CATALOGUE)));
    }
}
