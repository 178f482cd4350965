package org.sagwise.caution;

import org.sagwise.reading.Bench;

import java.util.Comparator;
import java.util.List;

/** All hazard rules. */
public final class Hazards {

    private static final List<HazardRule> RULES = List.of();

    private Hazards() {}

    /** Every caution about a bench, the gravest first. */
    public static List<Caution> check(Bench bench) {
        Evidence evidence = Evidence.of(bench);
        return RULES.stream()
                .flatMap(rule -> rule.check(evidence).stream())
                .sorted(Comparator.comparing(Caution::signal))
                .toList();
    }
}
