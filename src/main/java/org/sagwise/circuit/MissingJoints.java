package org.sagwise.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.sagwise.scenario.TerminalRef;

/** Finds out which joint is missing where no current flows although it should. */
public final class MissingJoints {

    private final Netlist circuit;
    private final Clusters clusters;
    private final JointEnds ends;

    private MissingJoints(Netlist circuit, Clusters clusters, JointEnds ends) {
        this.circuit = circuit;
        this.clusters = clusters;
        this.ends = ends;
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
            Netlist circuit,
            Predicate<Branch> isIdle,
            Predicate<TerminalRef> isLinked,
            ToDoubleFunction<TerminalRef> potentialV) {
        Clusters clusters = new Clusters(circuit, isIdle);
        MissingJoints search =
                new MissingJoints(circuit, clusters, new JointEnds(circuit, clusters, isLinked, potentialV));
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
        Set<Integer> second = clusters.side(clusters.of(load.to()), load);
        return Optional.of(blockers.isEmpty() ? joint(load, first, second) : blocked(load, blockers));
    }

    private boolean isAnyLinked(Branch load) {
        return ends.terminals(List.of(load.from(), load.to())).stream()
                .anyMatch(t -> t.part().equals(load.part()) && ends.isLinked().test(t));
    }

    private static MissingJoint blocked(Branch load, List<String> blockers) {
        return new MissingJoint(List.of(load.part()), blockers, Optional.empty(), Optional.empty(), true);
    }

    private MissingJoint joint(Branch load, Set<Integer> first, Set<Integer> second) {
        boolean firstDriven = first.stream().anyMatch(clusters::isDriven);
        boolean secondDriven = second.stream().anyMatch(clusters::isDriven);
        Optional<TerminalRef> atFirst =
                firstDriven ? ends.pole(first, load.from()) : ends.end(first, load, load.from());
        Optional<TerminalRef> atSecond =
                secondDriven ? ends.pole(second, load.to()) : ends.end(second, load, load.to());
        boolean secondIsLoose = firstDriven && !secondDriven;
        boolean driven = firstDriven || secondDriven;
        return new MissingJoint(
                List.of(load.part()),
                List.of(),
                secondIsLoose ? atSecond : atFirst,
                !driven ? Optional.empty() : secondIsLoose ? atFirst : atSecond,
                driven);
    }
}
