package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Nets;
import org.sagwise.scenario.net.Terminals;

/**
 * Which links are drawn as one set of plates: touching and ideal joints that meet at terminals. A
 * wire stays a thing of its own.
 */
final class PlateGroups {

    private final List<Link> links;
    private final Nets plates;
    private final Map<TerminalRef, Integer> drawn = new HashMap<>();
    private final int[] owners;
    private final int[] kin;

    PlateGroups(List<Link> links) {
        this.links = links;
        Terminals ends = Terminals.at(links);
        plates = Nets.of(ends, links, link -> !isWire(link));
        owners = firstOf(plates, PlateGroups::isWire);
        kin = firstOf(Nets.of(ends, links, link -> true), link -> false);
        countDrawn();
    }

    /** For each link the first one of its group, or itself if it stands alone. */
    private int[] firstOf(Nets nets, Predicate<Link> standsAlone) {
        Map<Integer, Integer> first = new HashMap<>();
        int[] firsts = new int[links.size()];
        for (int i = 0; i < firsts.length; i++) {
            Link link = links.get(i);
            Integer before = standsAlone.test(link) ? null : first.putIfAbsent(nets.of(link.from()), i);
            firsts[i] = before == null ? i : before;
        }
        return firsts;
    }

    private void countDrawn() {
        for (List<Integer> group : plates()) {
            group.stream()
                    .flatMap(index -> ends(links.get(index)).stream())
                    .distinct()
                    .forEach(end -> drawn.merge(end, 1, Integer::sum));
        }
        links.stream()
                .filter(PlateGroups::isWire)
                .flatMap(link -> ends(link).stream())
                .forEach(end -> drawn.merge(end, 1, Integer::sum));
    }

    private static List<TerminalRef> ends(Link link) {
        return List.of(link.from(), link.to());
    }

    static boolean isWire(Link link) {
        return link.joint() instanceof Joint.Jumper;
    }

    /** Indices of the links of each set of plates. */
    Collection<List<Integer>> plates() {
        Map<Integer, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < links.size(); i++) {
            if (!isWire(links.get(i))) {
                groups.computeIfAbsent(plates.of(links.get(i).from()), key -> new ArrayList<>())
                        .add(i);
            }
        }
        return groups.values();
    }

    /** Whether several conductors begin at a terminal. */
    boolean isShared(TerminalRef terminal) {
        return drawn.getOrDefault(terminal, 0) > 1;
    }

    /** A number for the conductor that a link belongs to: that of its first link for plates. */
    int ownerOf(int index) {
        return owners[index];
    }

    /** 1 if two conductors are joined anyway, so that they may run together for a while. */
    int kinship(int owner, int other) {
        if (owner < 0 || other < 0) {
            return 0;
        }
        return kin[owner] == kin[other] ? 1 : 0;
    }
}
