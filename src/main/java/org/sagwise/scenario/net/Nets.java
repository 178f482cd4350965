package org.sagwise.scenario.net;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * The one answer to what is joined to what: terminals gathered into nets, two of one net being
 * joined by links, directly or through others. Which links count is for the asker to say: all, the
 * ideal ones, those of metal on metal. The more links count, the coarser the nets. Nets are numbered
 * from 0 in the order of their first terminal.
 */
public final class Nets {

    private final Terminals terminals;
    private final Groups groups;
    private final int[] netOf;
    private final int size;

    /** By net; gathered when first asked for, since most are never asked. */
    private final List<List<TerminalRef>> members = new ArrayList<>();

    private Nets(Terminals terminals, Groups groups) {
        this.terminals = terminals;
        this.groups = groups;
        netOf = groups.numbered();
        int most = -1;
        for (int net : netOf) {
            most = Math.max(most, net);
        }
        size = most + 1;
    }

    /**
     * The nets of a scenario.
     *
     * @param counts whether a link joins its ends
     */
    public static Nets of(Scenario scenario, Predicate<Link> counts) {
        return of(Terminals.of(scenario), scenario.links(), counts);
    }

    /** The nets that some links make of some terminals; a link that ends elsewhere is left out. */
    public static Nets of(Terminals terminals, List<Link> links, Predicate<Link> counts) {
        Groups groups = new Groups(terminals.size());
        for (Link link : links) {
            int from = terminals.number(link.from());
            int to = terminals.number(link.to());
            if (from >= 0 && to >= 0 && counts.test(link)) {
                groups.join(from, to);
            }
        }
        return new Nets(terminals, groups);
    }

    /** Coarser nets of the same terminals: with some numbers of terminals joined besides. */
    public Nets with(Consumer<Groups> more) {
        Groups coarser = new Groups(groups);
        more.accept(coarser);
        return new Nets(terminals, coarser);
    }

    public Terminals terminals() {
        return terminals;
    }

    /** How many nets there are. */
    public int size() {
        return size;
    }

    /** The net of a terminal by its number. */
    public int of(int terminal) {
        return netOf[terminal];
    }

    /**
     * The net of a terminal.
     *
     * @throws IndexOutOfBoundsException if it is none of these terminals
     */
    public int of(TerminalRef terminal) {
        return netOf[terminals.number(terminal)];
    }

    /** Whether two terminals are joined; one that is not there is joined to itself alone. */
    public boolean joined(TerminalRef one, TerminalRef other) {
        int a = terminals.number(one);
        int b = terminals.number(other);
        return a < 0 || b < 0 ? one.equals(other) : netOf[a] == netOf[b];
    }

    /** The terminals of a net in the order of their numbers. */
    public List<TerminalRef> members(int net) {
        if (members.isEmpty()) {
            for (int i = 0; i < size; i++) {
                members.add(new ArrayList<>(4));
            }
            for (int i = 0; i < netOf.length; i++) {
                members.get(netOf[i]).add(terminals.get(i));
            }
        }
        return Collections.unmodifiableList(members.get(net));
    }
}
