package org.sagwise.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Cure;
import org.sagwise.assessment.fix.Fixes;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.CatalogueReading;
import org.sagwise.file.LessonReading;
import org.sagwise.file.Loaded;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.hazard.Caution;
import org.sagwise.lesson.LessonLint;
import org.sagwise.part.Catalogue;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.report.compare.Comparison;
import org.sagwise.report.explain.Explanation;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;

/** Insists that whatever came from a stranger is answered with something or with words. */
final class Answers {

    static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    static final ScenarioReader READER = new ScenarioReader(CATALOGUE);

    /** So many parts always fit into a share text. */
    private static final int FEW = 100;

    private Answers() {}

    /**
     * Whatever came of loading a scenario: words, or everything the program says about it, each in
     * good time.
     */
    static void of(Loaded loaded) {
        words(loaded);
        loaded.scenario().ifPresent(Answers::everything);
    }

    /** Words about what is wrong, and a scenario only where there are none. */
    static void words(Loaded loaded) {
        assertEquals(loaded.scenario().isEmpty(), !loaded.findings().isEmpty());
        for (Finding finding : loaded.findings()) {
            assertFalse(finding.text(Locale.ENGLISH).isBlank());
            assertFalse(finding.text(Locale.GERMAN).isBlank());
        }
    }

    private record Judged(Assessment assessment, List<Offer> offers) {

        static Judged of(Assessment assessment) {
            return new Judged(assessment, Fixes.of(assessment));
        }
    }

    /** Solves a scenario, judges, cures, explains, compares, lays out and shares it. */
    private static void everything(Scenario scenario) {
        Judged judged = Effort.bounded(() -> Judged.of(Assessment.of(scenario, CATALOGUE)));
        Assessment assessment = judged.assessment();
        judged.offers().forEach(Answers::harmless);
        Optional<Cure> cure = Cure.of(assessment);
        Effort.bounded(() -> explained(assessment, cure));
        cure.ifPresent(it -> Effort.bounded(() -> Comparison.of(assessment, it.after())));
        Effort.bounded(() -> BenchLayout.of(scenario));
        Optional<String> shared = ShareText.of(scenario);
        assertTrue(shared.isPresent() || scenario.parts().size() > FEW);
        shared.ifPresent(text ->
                assertEquals(scenario, ShareText.read(text, READER).scenario().orElseThrow()));
    }

    private static void explained(Assessment assessment, Optional<Cure> cure) {
        Explanation.Materials materials = new Explanation.Materials(
                assessment, ShareText.of(assessment.scenario()), cure, Optional.empty(), List.of());
        var post = Explanation.of(assessment, materials, Locale.ENGLISH, Signs.PRINT);
        for (PostFormat format : PostFormat.values()) {
            assertFalse(format.write(post, Locale.ENGLISH, Signs.ASCII).isBlank());
        }
    }

    private static void harmless(Offer offer) {
        for (Caution left : offer.after().cautions()) {
            assertTrue(left.signal().compareTo(offer.caution().signal()) >= 0, left.id());
        }
    }

    /** A catalogue, or its defects in words. */
    static void of(CatalogueReading reading) {
        assertEquals(reading.catalogue().isEmpty(), !reading.defects().isEmpty());
        reading.defects().forEach(defect -> {
            assertFalse(defect.describe(Locale.ENGLISH).isBlank());
            assertFalse(defect.describe(Locale.GERMAN).isBlank());
        });
    }

    /** A lesson that can be tried out, or what is wrong with it in words. */
    static void of(LessonReading reading) {
        assertEquals(reading.lesson().isEmpty(), !reading.faults().isEmpty());
        reading.faults().forEach(Answers::words);
        reading.lesson()
                .ifPresent(lesson -> LessonLint.check(lesson, CATALOGUE).stream()
                        .map(reading::locate)
                        .forEach(Answers::words));
    }

    private static void words(Finding fault) {
        assertFalse(fault.text(Locale.ENGLISH).isBlank());
        assertFalse(fault.text(Locale.GERMAN).isBlank());
    }
}
