package org.sagwise.reading;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.sagwise.network.Network;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.TerminalRef;

/**
 * A scenario at one moment as an electrical network, with the way back: which node a terminal is
 * and which element a part or a link has become.
 *
 * @param network the network
 * @param nodeOf node of every terminal
 * @param elementOf element of a part by its id; a part that lets nothing through, such as an open
 *     switch, has none
 * @param elementOfLink element of a link by its place; -1 for a link that joins nothing
 * @param owners what each element stands for, by its index
 */
public record Circuit(
        Network network,
        Map<TerminalRef, Integer> nodeOf,
        Map<String, Integer> elementOf,
        int[] elementOfLink,
        List<Owner> owners) {

    /**
     * What an element of the network stands for.
     *
     * @param part id of the part, or empty for a link or an inner joint of a part
     * @param link place of the link, or empty
     */
    public record Owner(String part, OptionalInt link) {
        static Owner of(String part) {
            return new Owner(part, OptionalInt.empty());
        }

        static Owner of(int link) {
            return new Owner("", OptionalInt.of(link));
        }
    }

    /** The bench in a state, with the button held or let go. */
    public static Circuit of(Bench bench, States states, Press press) {
        return CircuitCompiler.compile(bench, states, press);
    }

    /** Element that a part has become; empty if it lets nothing through. */
    public OptionalInt element(String part) {
        Integer index = elementOf.get(part);
        return index == null ? OptionalInt.empty() : OptionalInt.of(index);
    }

    /** Node of a terminal. */
    public int node(TerminalRef terminal) {
        return nodeOf.get(terminal);
    }
}
