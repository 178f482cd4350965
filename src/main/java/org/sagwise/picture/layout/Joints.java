package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Groups;
import org.sagwise.scenario.net.Terminals;

/**
 * Terminals that links join, whatever the joint's resistance, numbered. A link that would join both
 * ends of a part is left out: a part with a wire across it still has two ends in the picture.
 */
final class Joints {

    private final Terminals terminals;
    private final Groups groups;
    private final Map<Integer, List<TerminalRef>> members = new HashMap<>();

    private Joints(Terminals terminals) {
        this.terminals = terminals;
        groups = new Groups(terminals.size());
        for (int i = 0; i < terminals.size(); i++) {
            members.put(i, new ArrayList<>(List.of(terminals.get(i))));
        }
    }

    static Joints of(Scenario scenario) {
        Joints joints = new Joints(Terminals.of(scenario));
        scenario.links().forEach(joints::join);
        return joints;
    }

    /** Number of the joint that a terminal belongs to. */
    int of(TerminalRef terminal) {
        return groups.of(terminals.number(terminal));
    }

    /** Whether both ends of a link belong to one joint. */
    boolean joins(Link link) {
        return of(link.from()) == of(link.to());
    }

    private void join(Link link) {
        int one = of(link.from());
        int other = of(link.to());
        if (one != other && !wouldShort(one, other) && !onWrap(link)) {
            List<TerminalRef> both = members.remove(one);
            both.addAll(members.remove(other));
            groups.join(one, other);
            members.put(groups.of(one), both);
        }
    }

    private static boolean onWrap(Link link) {
        return link.from().terminal().equals("can") || link.to().terminal().equals("can");
    }

    private boolean wouldShort(int one, int other) {
        List<TerminalRef> fewer = members.get(one);
        List<TerminalRef> more = members.get(other);
        return fewer.stream().anyMatch(a -> more.stream().anyMatch(b -> arePoles(a, b) || arePoles(b, a)));
    }

    /** A board's input and output are two pairs of poles: only ends of one pair are a short. */
    private static boolean arePoles(TerminalRef a, TerminalRef b) {
        if (!a.part().equals(b.part())) {
            return false;
        }
        boolean sides = a.terminal().startsWith("in") != b.terminal().startsWith("in");
        return !sides;
    }
}
