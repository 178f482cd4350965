package org.sagwise.scenario.net;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Terminals, numbered from 0. */
public final class Terminals {

    private final List<TerminalRef> all;
    private final Map<TerminalRef, Integer> numbers = new HashMap<>();

    private Terminals(Collection<TerminalRef> terminals) {
        all = List.copyOf(terminals);
        for (int i = 0; i < all.size(); i++) {
            numbers.putIfAbsent(all.get(i), i);
        }
    }

    /** Those of a scenario, part by part in file order. */
    public static Terminals of(Scenario scenario) {
        List<TerminalRef> terminals = new ArrayList<>(3 * scenario.parts().size());
        scenario.parts().forEach(part -> terminals.addAll(part.terminals()));
        return new Terminals(terminals);
    }

    /** Those at which some links end. */
    public static Terminals at(List<Link> links) {
        return new Terminals(links.stream()
                .flatMap(link -> Stream.of(link.from(), link.to()))
                .distinct()
                .toList());
    }

    public int size() {
        return all.size();
    }

    public TerminalRef get(int number) {
        return all.get(number);
    }

    /** Number of a terminal; -1 if it is none of these. */
    public int number(TerminalRef terminal) {
        return numbers.getOrDefault(terminal, -1);
    }
}
