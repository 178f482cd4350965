package org.sagwise.scenario.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Takes one end of a link off its terminal and to another; what it is made of, and what is noted on
 * it, stays. Nothing happens where such a link would join a terminal to itself, or two that are
 * joined already.
 *
 * @param link its place in the scenario
 * @param end the terminal that it leaves
 * @param to the terminal that it goes to
 */
public record MoveEnd(int link, TerminalRef end, TerminalRef to) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        if (link < 0 || link >= before.links().size() || !JoinTerminals.isThere(before, to)) {
            return before;
        }
        Link old = before.links().get(link);
        TerminalRef from = old.from().equals(end) ? to : old.from();
        TerminalRef other = old.from().equals(end) ? old.to() : to;
        boolean joined = IntStream.range(0, before.links().size())
                .anyMatch(i -> i != link && before.links().get(i).joins(from, other));
        if (from.equals(other) || joined || !(old.from().equals(end) || old.to().equals(end))) {
            return before;
        }
        List<Link> links = new ArrayList<>(before.links());
        links.set(link, old.between(from, other));
        return before.withLinks(links);
    }

    @Override
    public List<Finding> missing(Scenario before) {
        return Missing.terminals(before, List.of(to));
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("move.end", EditName.terminalName(before, to));
    }
}
