package org.sagwise.scenario;

/**
 * What a text calls a joint, before a language is known: the joint of cell A's plus and the coil's
 * first end.
 *
 * @param from one end
 * @param to the other end
 */
public record JointName(TerminalName from, TerminalName to) {

    /** The name of a link of a scenario. */
    public static JointName of(Scenario scenario, Link link) {
        return new JointName(TerminalName.of(scenario, link.from()), TerminalName.of(scenario, link.to()));
    }
}
