package org.sagwise.caution.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** The terminals of a scenario, numbered part by part, and which of them links join. */
public final class Wiring {

    private final List<Part> parts;
    private final List<TerminalRef> terminals = new ArrayList<>();
    private final Map<TerminalRef, Integer> numbers = new HashMap<>();
    private final int[] firstOf;
    private final List<int[]> joints = new ArrayList<>();

    private Wiring(Scenario scenario, Predicate<Link> joins) {
        parts = scenario.parts();
        firstOf = new int[parts.size()];
        for (int i = 0; i < firstOf.length; i++) {
            firstOf[i] = terminals.size();
            for (TerminalRef terminal : parts.get(i).terminals()) {
                numbers.put(terminal, terminals.size());
                terminals.add(terminal);
            }
        }
        for (Link link : scenario.links()) {
            if (joins.test(link)) {
                joints.add(new int[] {numbers.get(link.from()), numbers.get(link.to())});
            }
        }
    }

    /**
     * Numbers the terminals of a scenario.
     *
     * @param joins whether a link joins its ends
     */
    public static Wiring of(Scenario scenario, Predicate<Link> joins) {
        return new Wiring(scenario, joins);
    }

    List<Part> parts() {
        return parts;
    }

    /** Number of the first terminal of a part, by its place in the scenario. */
    int firstOf(int part) {
        return firstOf[part];
    }

    int number(TerminalRef terminal) {
        return numbers.get(terminal);
    }

    TerminalRef terminal(int number) {
        return terminals.get(number);
    }

    int size() {
        return terminals.size();
    }

    /** Numbers of both ends of every link that joins them. */
    List<int[]> joints() {
        return joints;
    }
}
