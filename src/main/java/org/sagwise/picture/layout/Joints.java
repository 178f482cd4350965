package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Terminals that links join, whatever the joint's resistance, numbered. A link that would join both
 * ends of a part is left out: a part with a wire across it still has two ends in the picture.
 */
final class Joints {

    private final Map<TerminalRef, TerminalRef> parents = new HashMap<>();
    private final Map<TerminalRef, List<TerminalRef>> members = new HashMap<>();
    private final Map<TerminalRef, Integer> numbers = new HashMap<>();

    private Joints() {}

    static Joints of(Scenario scenario) {
        Joints joints = new Joints();
        for (Part part : scenario.parts()) {
            for (TerminalRef terminal : part.terminals()) {
                joints.parents.put(terminal, terminal);
                joints.members.put(terminal, new ArrayList<>(List.of(terminal)));
            }
        }
        scenario.links().forEach(joints::join);
        return joints;
    }

    /** Number of the joint that a terminal belongs to. */
    int of(TerminalRef terminal) {
        return numbers.computeIfAbsent(find(terminal), root -> numbers.size());
    }

    /** Whether both ends of a link belong to one joint. */
    boolean joins(Link link) {
        return parents.containsKey(link.from())
                && parents.containsKey(link.to())
                && find(link.from()).equals(find(link.to()));
    }

    private void join(Link link) {
        if (!parents.containsKey(link.from()) || !parents.containsKey(link.to())) {
            return;
        }
        TerminalRef one = find(link.from());
        TerminalRef other = find(link.to());
        if (!one.equals(other) && !wouldShort(one, other) && !onWrap(link)) {
            parents.put(other, one);
            members.get(one).addAll(members.remove(other));
        }
    }

    private static boolean onWrap(Link link) {
        return link.from().terminal().equals("can") || link.to().terminal().equals("can");
    }

    private boolean wouldShort(TerminalRef one, TerminalRef other) {
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

    private TerminalRef find(TerminalRef terminal) {
        TerminalRef root = terminal;
        while (!parents.get(root).equals(root)) {
            root = parents.get(root);
        }
        return root;
    }
}
