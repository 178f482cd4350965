package org.sagwise.picture.layout;

import java.util.Map;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;

/**
 * A scenario as a schematic sees it: whatever joins terminals is a plain line, and nothing has a
 * place yet. What lies across a part, or on a torn wrap, keeps a line of its own, since it would
 * otherwise make one point of two that are to be told apart.
 */
final class SchematicLinks {

    /** Any wire: only that it is one matters. */
    private static final int AWG = 18;

    private static final int LENGTH_MM = 50;

    private SchematicLinks() {}

    /** The same parts and as many links, in the same order. */
    static Scenario of(Scenario scenario) {
        Joints joints = Joints.of(scenario);
        return scenario.withPlacement(Map.of())
                .withLinks(scenario.links().stream()
                        .map(link -> drawn(link, joints))
                        .toList());
    }

    private static Link drawn(Link link, Joints joints) {
        return joints.joins(link)
                ? Link.ideal(link.from(), link.to())
                : Link.jumper(link.from(), link.to(), AWG, LENGTH_MM);
    }
}
