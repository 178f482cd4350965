package org.sagwise.circuit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.sagwise.scenario.TerminalRef;

/**
 * Picks the two ends that a missing joint should join.
 *
 * @param circuit the circuit with the button held
 * @param clusters its nets gathered where current can flow
 * @param isLinked whether a link ends at a terminal
 * @param potentialV potential of a terminal, V; NaN if it hangs in the air
 */
record JointEnds(
        Netlist circuit, Clusters clusters, Predicate<TerminalRef> isLinked, ToDoubleFunction<TerminalRef> potentialV) {

    /** Potentials closer than this count as the same, V. */
    private static final double SAME_V = 1e-3;

    /** Where a way from a net back through the sources of its side would have to end. */
    Optional<TerminalRef> pole(Set<Integer> side, int loadNet) {
        return otherOutput(loadNet)
                .or(() -> furthest(side, loadNet))
                .flatMap(net -> preferred(terminals(List.of(net)), ""));
    }

    /** The other output of a board that waits for its load on this net. */
    private Optional<Integer> otherOutput(int loadNet) {
        return circuit.outputs().stream()
                .filter(output -> output.to() == loadNet || (output.from() == loadNet && isLoose(output)))
                .map(output -> output.across(loadNet))
                .findFirst();
    }

    private boolean isLoose(Branch output) {
        return !isLinked.test(new TerminalRef(output.part(), "out+"));
    }

    /** The net furthest in potential; of several the first with a loose end, else the first. */
    private Optional<Integer> furthest(Set<Integer> side, int loadNet) {
        double loadV = potentialV(loadNet);
        double bestV = -1;
        Optional<Integer> best = Optional.empty();
        for (int net : clusters.nets(side)) {
            double apartV = Math.abs(potentialV(net) - loadV);
            boolean further = apartV > bestV + SAME_V;
            boolean looser = apartV > bestV - SAME_V && !hasLooseEnd(best) && hasLooseEnd(net);
            if (net != loadNet && (further || looser)) {
                best = Optional.of(net);
                bestV = apartV;
            }
        }
        return best;
    }

    private boolean hasLooseEnd(Optional<Integer> net) {
        return net.filter(this::hasLooseEnd).isPresent();
    }

    private boolean hasLooseEnd(int net) {
        return terminals(List.of(net)).stream().anyMatch(t -> !isLinked.test(t));
    }

    /** The loose end on a side without sources, of the load itself only if there is no other. */
    Optional<TerminalRef> end(Set<Integer> side, Branch load, int loadNet) {
        List<TerminalRef> loose = terminals(clusters.nets(side)).stream()
                .filter(t -> !isLinked.test(t))
                .toList();
        return loose.isEmpty() ? preferred(terminals(List.of(loadNet)), load.part()) : preferred(loose, load.part());
    }

    /** The first loose one, the first that does not belong to a part, the first. */
    private Optional<TerminalRef> preferred(List<TerminalRef> terminals, String butNotOf) {
        List<TerminalRef> foreign =
                terminals.stream().filter(t -> !t.part().equals(butNotOf)).toList();
        return foreign.stream()
                .filter(t -> !isLinked.test(t))
                .findFirst()
                .or(() -> foreign.stream().filter(this::isOfSource).findFirst())
                .or(() -> terminals.stream()
                        .filter(t -> t.part().equals(butNotOf))
                        .findFirst())
                .or(() -> terminals.stream().findFirst());
    }

    private boolean isOfSource(TerminalRef terminal) {
        return circuit.sources().stream().anyMatch(s -> s.part().equals(terminal.part()));
    }

    private double potentialV(int net) {
        return potentialV.applyAsDouble(circuit.terminals(net).get(0));
    }

    List<TerminalRef> terminals(List<Integer> nets) {
        return nets.stream()
                .flatMap(net -> circuit.terminals(net).stream())
                .filter(terminal -> !terminal.isCan())
                .toList();
    }
}
