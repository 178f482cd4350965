package org.sagwise.ui.analysis;

import java.util.List;
import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Fixes;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.hazard.Caution;
import org.sagwise.scenario.Scenario;

/**
 * The cures that are known for the cautions of one document.
 *
 * @param before what there is to say about the document; empty while nobody has looked for cures
 * @param offers every cure that holds, for the gravest caution first
 */
record Cures(Optional<Assessment> before, List<Offer> offers) {

    static final Cures NONE = new Cures(Optional.empty(), List.of());

    Cures {
        offers = List.copyOf(offers);
    }

    /** Looks for cures; may take a while. */
    static Cures of(Assessment assessment) {
        List<Offer> offers = assessment.cautions().stream()
                .flatMap(caution -> Fixes.of(assessment, caution).stream())
                .toList();
        return new Cures(Optional.of(assessment), offers);
    }

    List<Offer> of(Caution caution) {
        return offers.stream().filter(offer -> offer.caution().equals(caution)).toList();
    }

    /** Whether a cure stands there already for a graver caution. */
    boolean isRepeated(Offer offer) {
        Scenario result = offer.after().scenario();
        Optional<Offer> first = offers.stream()
                .filter(each -> each.after().scenario().equals(result))
                .findFirst();
        return first.isPresent() && first.get() != offer;
    }

    boolean areOf(Scenario scenario) {
        return before.filter(known -> known.scenario().equals(scenario)).isPresent();
    }
}
