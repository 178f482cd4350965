package org.sagwise.scenario.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Nets;

/**
 * How some cells are joined to each other and to the rest of a bench.
 *
 * <p>Cells that touch form plates. Of two plates that lead outside, the one on which more plus than
 * minus ends lie is the plus of the pack; where that does not decide, as with a reversed cell, the
 * first one is. With any other number of plates each goes by its own ends.
 */
final class PackEnds {

    private final Set<String> cells;
    private final Set<Integer> inner = new HashSet<>();
    private final Nets plates;
    private final Map<Integer, Integer> polarity = new LinkedHashMap<>();
    private final List<Keys> joints = new ArrayList<>();

    private PackEnds(Scenario scenario, Set<String> cells) {
        this.cells = cells;
        plates = Nets.of(scenario, this::isInner);
    }

    static PackEnds of(Scenario scenario, Set<String> cells) {
        PackEnds ends = new PackEnds(scenario, cells);
        for (int i = 0; i < scenario.links().size(); i++) {
            Link link = scenario.links().get(i);
            if (ends.isInner(link)) {
                ends.inner.add(i);
                ends.joints.add(link.keys());
            }
        }
        scenario.links().stream()
                .filter(link -> !ends.isInner(link))
                .flatMap(link -> Stream.of(link.from(), link.to()))
                .filter(ends::isOuter)
                .forEach(end -> ends.polarity.putIfAbsent(ends.plates.of(end), 0));
        scenario.parts().stream()
                .filter(part -> cells.contains(part.id()))
                .flatMap(part -> part.terminals().stream())
                .filter(ends::isOuter)
                .forEach(ends::vote);
        return ends;
    }

    private void vote(TerminalRef end) {
        int own = end.terminal().equals("+") ? 1 : -1;
        polarity.computeIfPresent(plates.of(end), (plate, votes) -> votes + own);
    }

    private boolean isInner(Link link) {
        return isOuter(link.from()) && isOuter(link.to());
    }

    /** Whether a joint at this end has to move to an end of the new pack. */
    boolean isOuter(TerminalRef end) {
        return cells.contains(end.part()) && !end.isCan();
    }

    /** Places of the links among the cells. */
    Set<Integer> inner() {
        return inner;
    }

    /** How the cells are joined now: as the first link among them. */
    Optional<Keys> joint() {
        return joints.stream().findFirst().map(keys -> keys.without("from", "to", "id", "x"));
    }

    boolean isPlus(TerminalRef end) {
        int own = plates.of(end);
        List<Integer> outer = List.copyOf(polarity.keySet());
        if (outer.size() != 2) {
            int votes = polarity.getOrDefault(own, 0);
            return votes == 0 ? end.terminal().equals("+") : votes > 0;
        }
        int first = polarity.get(outer.get(0));
        int second = polarity.get(outer.get(1));
        return own == (first >= second ? outer.get(0) : outer.get(1));
    }
}
