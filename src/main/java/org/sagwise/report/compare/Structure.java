package org.sagwise.report.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.part.key.Keys;
import org.sagwise.report.compare.Pairing.Mate;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Pairs parts that stand at the same place of two circuits, by colour refinement with
 * individualisation: terminals that differ in what they are, or in what they are joined to, get
 * different colours; of parts of one colour one pair is chosen and given a colour of its own, until
 * none is left.
 */
final class Structure {

    private final Scenario first;
    private final Scenario second;
    private final Map<String, Mate> mates = new LinkedHashMap<>();
    private final Map<TerminalRef, String> ownFirst = new HashMap<>();
    private final Map<TerminalRef, String> ownSecond = new HashMap<>();

    private Structure(Scenario first, Scenario second) {
        this.first = first;
        this.second = second;
    }

    /** Mates by id in the first scenario; parts without a like are left out. */
    static Map<String, Mate> mates(Scenario first, Scenario second) {
        Structure structure = new Structure(first, second);
        boolean going = true;
        while (going) {
            going = structure.pairOne();
        }
        return structure.mates;
    }

    private boolean pairOne() {
        Map<String, Integer> book = new HashMap<>();
        int rounds = Math.max(first.parts().size(), second.parts().size());
        Map<TerminalRef, Integer> here = start(first, ownFirst, book);
        Map<TerminalRef, Integer> there = start(second, ownSecond, book);
        for (int round = 0; round < rounds; round++) {
            Map<String, Integer> next = new HashMap<>();
            here = refined(first, here, next);
            there = refined(second, there, next);
        }
        for (Part part : first.parts()) {
            if (!mates.containsKey(part.id())) {
                Optional<Mate> mate = like(part, here, there);
                if (mate.isPresent()) {
                    settle(part, mate.get());
                    return true;
                }
            }
        }
        return false;
    }

    private Map<TerminalRef, Integer> start(
            Scenario scenario, Map<TerminalRef, String> own, Map<String, Integer> book) {
        Map<TerminalRef, Integer> colours = new HashMap<>();
        for (Part part : scenario.parts()) {
            String what =
                    part.keys().without("id", "label", Keys.FOREIGN).values().toString();
            boolean eitherWay = !new Mate(part, true).isReversed();
            for (TerminalRef terminal : part.terminals()) {
                String role = eitherWay ? "" : terminal.terminal();
                String colour = own.getOrDefault(terminal, what + " " + role);
                colours.put(terminal, number(colour, book));
            }
        }
        return colours;
    }

    private static Map<TerminalRef, Integer> refined(
            Scenario scenario, Map<TerminalRef, Integer> colours, Map<String, Integer> book) {
        Map<TerminalRef, List<String>> around = new HashMap<>();
        for (Part part : scenario.parts()) {
            List<TerminalRef> terminals = part.terminals();
            for (TerminalRef terminal : terminals) {
                List<String> near = new ArrayList<>();
                terminals.stream()
                        .filter(other -> !other.equals(terminal))
                        .forEach(other -> near.add("in " + colours.get(other)));
                around.put(terminal, near);
            }
        }
        for (Link link : scenario.links()) {
            around.get(link.from()).add(link.joint() + " " + colours.get(link.to()));
            around.get(link.to()).add(link.joint() + " " + colours.get(link.from()));
        }
        Map<TerminalRef, Integer> finer = new HashMap<>();
        around.forEach((terminal, near) -> {
            Collections.sort(near);
            finer.put(terminal, number(colours.get(terminal) + " " + near, book));
        });
        return finer;
    }

    private static int number(String colour, Map<String, Integer> book) {
        return book.computeIfAbsent(colour, key -> book.size());
    }

    private Optional<Mate> like(Part part, Map<TerminalRef, Integer> here, Map<TerminalRef, Integer> there) {
        List<Integer> wanted = part.terminals().stream().map(here::get).toList();
        for (Part other : second.parts()) {
            boolean taken =
                    mates.values().stream().anyMatch(mate -> mate.part().id().equals(other.id()));
            if (taken || other.kind() != part.kind()) {
                continue;
            }
            List<Integer> found = other.terminals().stream().map(there::get).toList();
            if (found.equals(wanted)) {
                return Optional.of(new Mate(other, false));
            }
            if (found.size() == 2 && List.of(found.get(1), found.get(0)).equals(wanted)) {
                return Optional.of(new Mate(other, true));
            }
        }
        return Optional.empty();
    }

    private void settle(Part part, Mate mate) {
        String token = "pair " + mates.size();
        mates.put(part.id(), mate);
        List<TerminalRef> these = part.terminals();
        List<TerminalRef> those = mate.part().terminals();
        for (int i = 0; i < these.size(); i++) {
            int across = mate.turned() && i < 2 ? 1 - i : i;
            ownFirst.put(these.get(i), token + " " + i);
            ownSecond.put(those.get(across), token + " " + i);
        }
    }
}
