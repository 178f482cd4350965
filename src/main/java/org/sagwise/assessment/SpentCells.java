package org.sagwise.assessment;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Signal;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Cells that nobody should use again if a bench was ever joined, or its button pressed, as drawn: shorted, charged
 * backwards or beyond a limit, driven below empty, heavily over their limit. Such a cell can look well and fail later.
 * Common practice, no source; the advice of the cautions says the same of each.
 */
public final class SpentCells {

    /** Which of the parts of a caution are meant. */
    private enum Which {
        ALL,
        FIRST,
        TURNED
    }

    private record Rule(Signal from, Which which) {}

    /** From which signal word on a caution means that cells of it are past use. */
    private static final Map<String, Rule> RULES = Map.ofEntries(
            Map.entry("reversed-in-parallel", new Rule(Signal.WARNING, Which.ALL)),
            Map.entry("reversed-in-series", new Rule(Signal.WARNING, Which.TURNED)),
            Map.entry("unequal-rows-in-parallel", new Rule(Signal.WARNING, Which.ALL)),
            Map.entry("pack-shorted", new Rule(Signal.WARNING, Which.ALL)),
            Map.entry("coil-bypassed", new Rule(Signal.WARNING, Which.ALL)),
            Map.entry("torn-wrap-touching", new Rule(Signal.DANGER, Which.ALL)),
            Map.entry("meter-across-cell", new Rule(Signal.WARNING, Which.ALL)),
            Map.entry("cell-over-limit", new Rule(Signal.DANGER, Which.ALL)),
            Map.entry("unequal-charge-in-parallel", new Rule(Signal.WARNING, Which.FIRST)),
            Map.entry("charge-over-limit", new Rule(Signal.WARNING, Which.ALL)),
            Map.entry("supply-charges-cell", new Rule(Signal.WARNING, Which.ALL)),
            Map.entry("cell-above-full", new Rule(Signal.WARNING, Which.ALL)),
            Map.entry("cell-charged-above-full", new Rule(Signal.WARNING, Which.ALL)),
            Map.entry("cell-hot", new Rule(Signal.DANGER, Which.ALL)),
            Map.entry("cell-driven-backwards", new Rule(Signal.WARNING, Which.ALL)),
            Map.entry("cell-deep-discharged", new Rule(Signal.WARNING, Which.ALL)));

    private SpentCells() {}

    /** In the order of the scenario; empty where nothing of the kind would happen. */
    public static List<Part> of(Scenario scenario, List<Caution> cautions) {
        Set<String> named = named(cautions);
        return scenario.partsOf(PartKind.CELL).stream()
                .filter(part -> named.contains(part.id()))
                .toList();
    }

    private static Set<String> named(List<Caution> cautions) {
        Set<String> named = new HashSet<>();
        for (Caution caution : cautions) {
            Rule rule = RULES.get(caution.id());
            if (rule != null && caution.signal().compareTo(rule.from()) <= 0) {
                named.addAll(meant(caution, rule.which()));
            }
        }
        return named;
    }

    private static List<String> meant(Caution caution, Which which) {
        int turned = caution.details().get("turned") instanceof List<?> names ? names.size() : 1;
        return switch (which) {
            case ALL -> caution.parts();
            case FIRST -> caution.parts().subList(0, 1);
            case TURNED -> caution.parts().subList(0, turned);
        };
    }
}
