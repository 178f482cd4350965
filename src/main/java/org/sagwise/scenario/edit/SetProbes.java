package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Optional;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;

/**
 * Puts the meter's probes somewhere, turns the meter, or takes both away.
 *
 * @param probes where they rest
 */
public record SetProbes(Optional<Probes> probes) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        return before.withProbes(probes.filter(
                both -> JoinTerminals.isThere(before, both.red()) && JoinTerminals.isThere(before, both.black())));
    }

    @Override
    public List<Finding> missing(Scenario before) {
        return probes.map(both -> Missing.terminals(before, List.of(both.red(), both.black())))
                .orElse(List.of());
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of(probes.filter(after -> isTurned(before, after))
                .map(after -> "probes." + after.mode().word())
                .orElse(probes.isPresent() ? "probes.put" : "probes.away"));
    }

    private static boolean isTurned(Scenario before, Probes after) {
        return before.probes().filter(old -> old.mode() != after.mode()).isPresent();
    }
}
