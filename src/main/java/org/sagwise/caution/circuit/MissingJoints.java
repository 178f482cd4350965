package org.sagwise.caution.circuit;

import org.sagwise.scenario.TerminalRef;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Finds out which joint is missing where no current flows although it should. */
public final class MissingJoints {

    private final Circuit circuit;
    private final Clusters clusters;
    private final Predicate<TerminalRef> isLinked;
    private final ToDoubleFunction<TerminalRef> potentialV;

    private MissingJoints(
            Circuit circuit,
            Clusters clusters,
            Predicate<TerminalRef> isLinked,
            ToDoubleFunction<TerminalRef> potentialV) {
        this.circuit = circuit;
        this.clusters = clusters;
        this.isLinked = isLinked;
        this.potentialV = potentialV;
    }

    /**
     * What keeps current from loads that have been joined to something.
     *
     * @param circuit the circuit with the button held
     * @param isIdle whether a load carries no current
     * @param isLinked whether a link ends at a terminal
     * @param potentialV potential of a terminal, V; NaN if it hangs in the air
     */
    public static List<MissingJoint> in(
            Circuit circuit,
            Predicate<Branch> isIdle,
            Predicate<TerminalRef> isLinked,
            ToDoubleFunction<TerminalRef> potentialV) {
        Clusters clusters = new Clusters(circuit, isIdle);
        MissingJoints search = new MissingJoints(circuit, clusters, isLinked, potentialV);
        List<MissingJoint> found = new ArrayList<>();
        for (Branch load : circuit.loads()) {
            if (clusters.of(load.from()) != clusters.of(load.to())) {
                search.at(load).ifPresent(missing -> merge(found, missing));
            }
        }
        return found;
    }

    private static void merge(List<MissingJoint> found, MissingJoint missing) {
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).hasCureOf(missing)) {
                found.set(i, found.get(i).with(missing.loads()));
                return;
            }
        }
        found.add(missing);
    }

    private Optional<MissingJoint> at(Branch load) {
        Set<Integer> first = clusters.side(clusters.of(load.from()), load);
        if (!isAnyLinked(load) || first.contains(clusters.of(load.to()))) {
            return Optional.empty();
        }
        List<String> blockers = new Blockers(circuit, clusters, load).find();
        if (!blockers.isEmpty()) {
            return Optional.of(
                    new MissingJoint(
                            List.of(load.part()), blockers, Optional.empty(), Optional.empty()));
        }
        Set<Integer> second = clusters.side(clusters.of(load.to()), load);
        return Optional.of(joint(load, first, second));
    }

    private boolean isAnyLinked(Branch load) {
        return terminals(List.of(load.from(), load.to())).stream()
                .anyMatch(t -> t.part().equals(load.part()) && isLinked.test(t));
    }

    private MissingJoint joint(Branch load, Set<Integer> first, Set<Integer> second) {
        boolean firstDriven = first.stream().anyMatch(clusters::isDriven);
        boolean secondDriven = second.stream().anyMatch(clusters::isDriven);
        Optional<TerminalRef> atFirst =
                firstDriven ? pole(first, load.from()) : end(first, load, load.from());
        Optional<TerminalRef> atSecond =
                secondDriven ? pole(second, load.to()) : end(second, load, load.to());
        List<String> loads = List.of(load.part());
        if (firstDriven == secondDriven) {
            return new MissingJoint(
                    loads, List.of(), atFirst, firstDriven ? atSecond : Optional.empty());
        }
        return firstDriven
                ? new MissingJoint(loads, List.of(), atSecond, atFirst)
                : new MissingJoint(loads, List.of(), atFirst, atSecond);
    }

    /** A terminal of the net that is furthest in potential from where the load hangs. */
    private Optional<TerminalRef> pole(Set<Integer> side, int loadNet) {
        double loadV = potentialV(loadNet);
        int best = -1;
        double bestV = -1;
        for (int net : clusters.nets(side)) {
            double apartV = Math.abs(potentialV(net) - loadV);
            if (net != loadNet && apartV > bestV) {
                best = net;
                bestV = apartV;
            }
        }
        return best < 0 ? Optional.empty() : preferred(terminals(List.of(best)), "");
    }

    /** The loose end on a side without sources, of the load itself only if there is no other. */
    private Optional<TerminalRef> end(Set<Integer> side, Branch load, int loadNet) {
        List<TerminalRef> loose =
                terminals(clusters.nets(side)).stream().filter(t -> !isLinked.test(t)).toList();
        return loose.isEmpty()
                ? preferred(terminals(List.of(loadNet)), load.part())
                : preferred(loose, load.part());
    }

    /** The first loose one, the first that does not belong to a part, the first. */
    private Optional<TerminalRef> preferred(List<TerminalRef> terminals, String butNotOf) {
        List<TerminalRef> foreign =
                terminals.stream().filter(t -> !t.part().equals(butNotOf)).toList();
        return foreign.stream()
                .filter(t -> !isLinked.test(t))
                .findFirst()
                .or(() -> foreign.stream().filter(this::isOfSource).findFirst())
                .or(() -> terminals.stream().filter(t -> t.part().equals(butNotOf)).findFirst())
                .or(() -> terminals.stream().findFirst());
    }

    private boolean isOfSource(TerminalRef terminal) {
        return circuit.sources().stream().anyMatch(s -> s.part().equals(terminal.part()));
    }

    private double potentialV(int net) {
        return potentialV.applyAsDouble(circuit.terminals(net).get(0));
    }

    private List<TerminalRef> terminals(List<Integer> nets) {
        return nets.stream()
                .flatMap(net -> circuit.terminals(net).stream())
                .filter(terminal -> !terminal.terminal().equals("can"))
                .toList();
    }
}
