package org.sagwise.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.fixture.Circuits;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.run.RunPlan;
import org.sagwise.run.Runner;
import org.sagwise.scenario.Scenario;

/** Sound demos are sound, and each of the others teaches the mistake it is there for. */
class DemoCautionsTest {

    private static final Set<String> SOUND = Set.of(
            "one-cell-on-half-an-ohm",
            "two-cells-side-by-side",
            "two-in-a-row",
            "two-side-by-side-ideal",
            "two-in-a-row-ideal",
            "bench-check",
            "two-by-two",
            "regulated-board");

    private static Scenario demo(String name) {
        return new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes(name))
                .scenario()
                .orElseThrow();
    }

    private static List<Caution> cautions(String name) {
        return Hazards.check(Bench.of(demo(name), CatalogueLoader.builtIn()));
    }

    static List<String> sound() {
        return SOUND.stream().sorted().toList();
    }

    static List<String> all() {
        return DemoScenarios.names();
    }

    @ParameterizedTest
    @MethodSource("sound")
    void soundDemo_itsCautions_areNone(String name) {
        assertEquals(List.of(), cautions(name));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "thin-wire | jumper-over-ampacity CAUTION",
                "fuse-that-comes-back | ptc-will-trip NOTICE",
                "too-few-ohms | cell-over-limit WARNING",
                "re-wrapped-cell | cell-over-limit DANGER, label-claims WARNING",
                "protected-pair-asked-too-much | cell-over-limit WARNING, guard-trip NOTICE",
                "old-and-new-in-a-row | mixed-health CAUTION",
                "flat-beside-full | unequal-charge-in-parallel WARNING",
                "row-of-two-one-reversed | reversed-in-series NOTICE",
                "row-of-three-one-reversed | reversed-in-series WARNING",
                "side-by-side-one-reversed | reversed-in-parallel DANGER",
                "side-by-side-with-reverse-guards | reverse-guard-blocks NOTICE",
                "torn-wrap | torn-wrap-touching DANGER",
                "paper-clip-across-the-coil | coil-bypassed DANGER",
                "meter-left-on-amps | meter-across-cell DANGER"
            })
    void faultyDemo_itsCautions_areThoseItTeaches(String name, String expected) {
        String found = cautions(name).stream()
                .map(caution -> caution.id() + " " + caution.signal())
                .distinct()
                .collect(Collectors.joining(", "));
        assertEquals(expected, found);
    }

    /** "Across the coil a thick wire draws 57 A, and the fuse still takes 0.7 s": the same bench, so joined. */
    @Test
    void fuseThatComesBack_theNumbersItTells_areTheModels() {
        Scenario told = demo("fuse-that-comes-back");
        assertTrue(told.about().contains("57 A") && told.about().contains("0.7 s"), told.about());
        assertTrue(told.about().contains("quarter of a minute"), told.about());
        Bench asDrawn = Bench.of(told, CatalogueLoader.builtIn());
        double slowS = Runner.run(asDrawn, RunPlan.held().until(60))
                .events(Kind.PTC_TRIPPED)
                .get(0)
                .atS();
        assertEquals(15, slowS, 2.5);

        Scenario shorted = told.plus(Circuits.jumper("coil.1", "coil.2", 10, 40));
        Bench bench = Bench.of(shorted, CatalogueLoader.builtIn());
        assertEquals(57, bench.fired().cell("A").orElseThrow().currentA(), 0.6);
        double quickS = Runner.run(bench, RunPlan.held().until(60))
                .events(Kind.PTC_TRIPPED)
                .get(0)
                .atS();
        assertEquals(0.7, quickS, 0.05);
    }

    @Test
    void expectations_together_coverEveryDemo() {
        int faulty = 14;
        assertTrue(DemoScenarios.names().containsAll(SOUND));
        assertEquals(DemoScenarios.names().size(), SOUND.size() + faulty);
        assertEquals(new TreeSet<>(all()).size(), all().size());
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyDemo_itsWords_tellWhatToLookAtAndWhatToTry(String name) {
        Scenario demo = demo(name);
        assertFalse(demo.title().isBlank());
        assertTrue(demo.about().contains("**Try**"), "something to try");
        assertTrue(demo.about().contains("**Look at**") || demo.about().contains("measures"), "something to look at");
        assertFalse(demo.about().matches("(?is).*\\bsafe(ly|ty)?\\b.*"), "no promise");
    }
}
