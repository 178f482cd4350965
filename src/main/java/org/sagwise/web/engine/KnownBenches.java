package org.sagwise.web.engine;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Fixes;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.hazard.Caution;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/** The last few benches with what there is to say of them: who tries something out goes back and forth. */
final class KnownBenches {

    private static final int KEPT = 24;

    private final Catalogue catalogue;
    private final Deque<Known> kept = new ArrayDeque<>();

    KnownBenches(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * A bench that has lain here.
     *
     * @param first what its first moment tells
     * @param ahead its cautions with those that only time shows; empty before it was looked for them
     * @param tried cures that were tried on it, each on a whole bench
     */
    record Known(Assessment first, Optional<List<Caution>> ahead, Map<Asked, List<Offer>> tried) {

        private Known(Assessment first, Optional<List<Caution>> ahead) {
            this(first, ahead, new HashMap<>());
        }

        boolean isForeseen() {
            return ahead.isPresent();
        }

        /** With all cautions that are known of it. */
        Assessment told() {
            return ahead.map(first::saying).orElse(first);
        }

        /** Cures of one of its cautions, before any time has passed. */
        List<Offer> cures(Caution caution, Press press) {
            return tried.computeIfAbsent(new Asked(caution, press), it -> Fixes.of(told().with(press), caution));
        }
    }

    /** A caution, with the button let go or held. */
    record Asked(Caution caution, Press press) {}

    /** What there is to say of a bench, its button as it says. */
    Known of(Scenario scenario) {
        Known known = find(scenario).orElseGet(() -> new Known(Assessment.of(scenario, catalogue), Optional.empty()));
        kept.remove(known);
        add(known);
        return known;
    }

    /** Whether a bench has lain here: then it is a sound one. */
    boolean has(Scenario scenario) {
        return find(scenario).isPresent();
    }

    /** Notes what time shows on a bench. */
    void foreseen(Scenario scenario, List<Caution> cautions) {
        find(scenario).ifPresent(known -> {
            kept.remove(known);
            add(new Known(known.first, Optional.of(cautions)));
        });
    }

    private Optional<Known> find(Scenario scenario) {
        return kept.stream()
                .filter(known -> known.first.scenario().equals(scenario))
                .findFirst();
    }

    private void add(Known known) {
        kept.addFirst(known);
        if (kept.size() > KEPT) {
            kept.removeLast();
        }
    }
}
