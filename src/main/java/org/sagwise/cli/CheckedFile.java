package org.sagwise.cli;

import java.util.List;
import java.util.Locale;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Fixes;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.hazard.Caution;

/**
 * A file with its cautions.
 *
 * @param given what the file held
 * @param cautions gravest first; empty if it could not be read
 * @param cures what would cure them, each tried
 */
record CheckedFile(GivenScenario given, List<Caution> cautions, List<Offer> cures) {

    CheckedFile {
        cautions = List.copyOf(cautions);
        cures = List.copyOf(cures);
    }

    /** What there is to say about a file; nothing about one that could not be read. */
    static CheckedFile of(GivenScenario given) {
        return given.scenario()
                .map(it -> Assessment.of(it, CatalogueLoader.builtIn()).lookingAhead())
                .map(it -> new CheckedFile(given, it.cautions(), Fixes.of(it)))
                .orElseGet(() -> new CheckedFile(given, List.of(), List.of()));
    }

    /** Names of the cures of a caution. */
    List<String> curesOf(Caution caution, Locale locale) {
        return cures.stream()
                .filter(offer -> offer.caution().equals(caution))
                .map(offer -> offer.fix().name(locale))
                .toList();
    }
}
