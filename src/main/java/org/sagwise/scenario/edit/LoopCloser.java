package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.sagwise.part.PartKind;
import org.sagwise.part.Role;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Nets;

/**
 * Leads from the plus of a pack over a button and a coil to its minus, where both lie on the bench
 * and have an end that is not joined to anything. Without a button nothing is closed: a loop that
 * is always on is nobody's wish.
 */
final class LoopCloser {

    private final Keys joint;
    private Scenario scenario;

    private LoopCloser(Scenario scenario, Keys joint) {
        this.scenario = scenario;
        this.joint = joint;
    }

    /**
     * @param plus an end of the pack
     * @param minus the other end of the pack
     * @param inPack whether a part belongs to the pack
     */
    static Scenario close(
            Scenario scenario, TerminalRef plus, TerminalRef minus, Predicate<String> inPack, Keys joint) {
        if (leadsOn(scenario, plus, inPack) && leadsOn(scenario, minus, inPack)) {
            return scenario;
        }
        Optional<Part> button = open(scenario, part -> part.kind() == PartKind.SWITCH);
        Optional<Part> load = open(scenario, part -> part.kind().role() == Role.LOAD);
        return button.flatMap(one -> load.map(other -> new LoopCloser(scenario, joint).led(plus, one, other, minus)))
                .orElse(scenario);
    }

    /** Whether something besides the pack is joined to its end. */
    private static boolean leadsOn(Scenario scenario, TerminalRef end, Predicate<String> inPack) {
        Nets nets = Nets.of(scenario, link -> true);
        return scenario.parts().stream()
                .filter(part -> !inPack.test(part.id()))
                .flatMap(part -> part.terminals().stream())
                .anyMatch(terminal -> nets.joined(terminal, end));
    }

    /** The first such part with an end that is free. */
    private static Optional<Part> open(Scenario scenario, Predicate<Part> wanted) {
        Set<TerminalRef> taken = taken(scenario);
        return scenario.parts().stream()
                .filter(wanted)
                .filter(part -> !taken.containsAll(part.terminals()))
                .findFirst();
    }

    private static Set<TerminalRef> taken(Scenario scenario) {
        return scenario.links().stream()
                .flatMap(link -> Stream.of(link.from(), link.to()))
                .collect(Collectors.toSet());
    }

    private Scenario led(TerminalRef plus, Part button, Part load, TerminalRef minus) {
        if (!touch(button, load)) {
            join(last(button), first(load));
        }
        boolean turned = reaches(button, minus) || reaches(load, plus);
        join(first(button), Optional.of(turned ? minus : plus));
        join(last(load), Optional.of(turned ? plus : minus));
        return scenario;
    }

    private void join(Optional<TerminalRef> one, Optional<TerminalRef> other) {
        if (one.isPresent() && other.isPresent()) {
            scenario = new JoinTerminals(List.of(one.get(), other.get()), joint).apply(scenario);
        }
    }

    private Optional<TerminalRef> first(Part part) {
        return free(part).findFirst();
    }

    private Optional<TerminalRef> last(Part part) {
        return free(part).reduce((one, next) -> next);
    }

    private Stream<TerminalRef> free(Part part) {
        Set<TerminalRef> taken = taken(scenario);
        return part.terminals().stream().filter(terminal -> !taken.contains(terminal));
    }

    private boolean touch(Part one, Part other) {
        return other.terminals().stream().anyMatch(terminal -> reaches(one, terminal));
    }

    private boolean reaches(Part part, TerminalRef end) {
        Nets nets = Nets.of(scenario, link -> true);
        return part.terminals().stream().anyMatch(terminal -> nets.joined(terminal, end));
    }
}
