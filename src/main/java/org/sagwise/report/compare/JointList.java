package org.sagwise.report.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Nets;

/**
 * The joints of a scenario under names that another scenario may share. Terminals that ideal joints
 * join are one point, by whatever way they are joined.
 */
final class JointList {

    private final Map<String, String> pointOf = new HashMap<>();
    private final List<Named> joints = new ArrayList<>();

    /**
     * A joint that is not ideal.
     *
     * @param between its two points, in an order that does not depend on how it was written
     * @param joint how they are joined
     * @param link the link as written
     */
    record Named(String between, Joint joint, Link link) {}

    /**
     * @param names what the other scenario calls a terminal
     */
    JointList(Scenario scenario, Function<TerminalRef, String> names) {
        Nets nets = Nets.of(scenario, link -> link.joint() instanceof Joint.Ideal);
        for (int net = 0; net < nets.size(); net++) {
            List<String> point = nets.members(net).stream().map(names).sorted().toList();
            point.forEach(terminal -> pointOf.put(terminal, point.get(0)));
        }
        for (Link link : scenario.links()) {
            if (!(link.joint() instanceof Joint.Ideal)) {
                String from = point(names.apply(link.from()));
                String to = point(names.apply(link.to()));
                String between = from.compareTo(to) <= 0 ? from + " " + to : to + " " + from;
                joints.add(new Named(between, link.joint(), link));
            }
        }
    }

    List<Named> joints() {
        return joints;
    }

    /** The point at which a terminal lies: the terminal of it that comes first in the alphabet. */
    String point(String terminal) {
        return pointOf.getOrDefault(terminal, terminal);
    }
}
