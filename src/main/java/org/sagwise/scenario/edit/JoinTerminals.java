package org.sagwise.scenario.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.TerminalRef;

/**
 * Joins terminals: two by a touch or a jumper, several as by a plate that begins at the first. A
 * pair that is joined already gets the new joint in place of the old one.
 *
 * @param terminals the terminals, at least two, each once
 * @param joint how, as a link of a scenario file says it ({@code contact_mohm}, {@code jumper},
 *     {@code ideal})
 */
public record JoinTerminals(List<TerminalRef> terminals, Keys joint) implements Edit {

    public JoinTerminals {
        terminals = List.copyOf(terminals);
    }

    /** Two terminals joined without resistance. */
    public static JoinTerminals ideal(TerminalRef one, TerminalRef other) {
        return new JoinTerminals(List.of(one, other), Keys.of("ideal", true));
    }

    /** Two parts that touch; contact resistance in mΩ, 0 or more. */
    public static JoinTerminals touch(TerminalRef one, TerminalRef other, double mohm) {
        return new JoinTerminals(List.of(one, other), Keys.of("contact_mohm", mohm));
    }

    /**
     * A copper wire.
     *
     * @param awg American wire gauge number, 0 to 50
     * @param lengthMm length, mm
     */
    public static JoinTerminals jumper(TerminalRef one, TerminalRef other, int awg, double lengthMm) {
        return new JoinTerminals(List.of(one, other), Keys.of("jumper", Keys.of("awg", awg, "length_mm", lengthMm)));
    }

    @Override
    public Scenario apply(Scenario before) {
        List<TerminalRef> there = terminals.stream()
                .filter(end -> isThere(before, end))
                .distinct()
                .toList();
        Scenario after = before;
        for (int i = 1; i < there.size(); i++) {
            after = joined(after, there.get(0), there.get(i));
        }
        return after;
    }

    private Scenario joined(Scenario scenario, TerminalRef from, TerminalRef to) {
        List<Link> links = new ArrayList<>(scenario.links());
        int old = IntStream.range(0, links.size())
                .filter(i -> links.get(i).joins(from, to))
                .findFirst()
                .orElse(-1);
        if (old >= 0) {
            links.set(old, with(links.get(old).keys()));
        } else if (links.size() < ScenarioKeys.MOST_LINKS) {
            links.add(with(Keys.of("from", from.toString(), "to", to.toString())));
        }
        return scenario.withLinks(links);
    }

    private Link with(Keys ends) {
        Keys keys = ends.without(ScenarioKeys.joint());
        for (var entry : joint.values().entrySet()) {
            keys = keys.with(entry.getKey(), entry.getValue());
        }
        return Link.of(keys);
    }

    static boolean isThere(Scenario scenario, TerminalRef end) {
        return scenario.part(end.part())
                .filter(part -> part.terminals().contains(end))
                .isPresent();
    }

    @Override
    public List<Finding> missing(Scenario before) {
        return Missing.terminals(before, terminals);
    }

    @Override
    public EditName name(Scenario before) {
        return terminals.size() == 2
                ? EditName.of(
                        "join.two",
                        EditName.terminalName(before, terminals.get(0)),
                        EditName.terminalName(before, terminals.get(1)))
                : EditName.of("join.many", String.valueOf(terminals.size()));
    }
}
