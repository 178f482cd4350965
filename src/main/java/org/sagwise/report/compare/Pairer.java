package org.sagwise.report.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.part.PartKind;
import org.sagwise.report.compare.Pairing.Mate;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Finds which part of one scenario stands for which part of another. Begins with parts of the same
 * id, and with parts of the same place in the circuit; exchanges two mates of a kind, or turns one
 * round, for as long as fewer differences are left; and takes the better of the two ends. Circuits
 * too large for that are paired by their ids alone.
 */
final class Pairer {

    /** So many parts of one kind can be exchanged with each other in good time. */
    private static final int MOST_PARTS = 24;

    private static final int MOST_ROUNDS = 60;

    private static final int COST_OF_TURNING = 2;

    private final Scenario first;
    private final Scenario second;

    private Pairer(Scenario first, Scenario second) {
        this.first = first;
        this.second = second;
    }

    static Pairing pair(Scenario first, Scenario second) {
        Pairer pairer = new Pairer(first, second);
        Pairing byId = pairer.begin(pairer.sameIds());
        if (Math.max(first.parts().size(), second.parts().size()) > MOST_PARTS) {
            return byId;
        }
        Pairing one = pairer.improved(byId);
        if (pairer.cost(one) == 0) {
            return one;
        }
        Pairing other = pairer.improved(pairer.begin(Structure.mates(first, second)));
        return pairer.cost(other) < pairer.cost(one) ? other : one;
    }

    private Map<String, Mate> sameIds() {
        Map<String, Mate> mates = new LinkedHashMap<>();
        for (Part part : first.parts()) {
            second.part(part.id())
                    .filter(other -> other.kind() == part.kind())
                    .ifPresent(other -> mates.put(part.id(), new Mate(other, false)));
        }
        return mates;
    }

    /** Pairs what is left of each kind: the most alike first. */
    private Pairing begin(Map<String, Mate> given) {
        Map<String, Mate> mates = new LinkedHashMap<>(given);
        List<Part> free = new ArrayList<>(second.parts());
        mates.values().forEach(mate -> free.remove(mate.part()));
        for (Part part : first.parts()) {
            if (mates.containsKey(part.id())) {
                continue;
            }
            Optional<Part> most = free.stream()
                    .filter(other -> other.kind() == part.kind())
                    .min(Comparator.comparingInt(
                            other -> Builds.differingKeys(part, other).size()));
            most.ifPresent(other -> {
                free.remove(other);
                mates.put(part.id(), new Mate(other, false));
            });
        }
        return new Pairing(mates);
    }

    private Pairing improved(Pairing start) {
        Pairing best = start;
        int cost = cost(start);
        for (int round = 0; round < MOST_ROUNDS && cost > 0; round++) {
            Pairing better = best;
            for (Pairing neighbour : neighbours(best)) {
                int other = cost(neighbour);
                if (other < cost) {
                    cost = other;
                    better = neighbour;
                }
            }
            if (better == best) {
                break;
            }
            best = better;
        }
        return best;
    }

    private List<Pairing> neighbours(Pairing pairing) {
        List<Pairing> neighbours = new ArrayList<>();
        List<Part> parts = first.parts().stream()
                .filter(part -> pairing.of(part.id()).isPresent())
                .toList();
        for (int i = 0; i < parts.size(); i++) {
            String id = parts.get(i).id();
            if (parts.get(i).kind() != PartKind.BOARD) {
                neighbours.add(pairing.with(id, pairing.of(id).orElseThrow().turnedRound()));
            }
            for (int j = i + 1; j < parts.size(); j++) {
                if (parts.get(i).kind() == parts.get(j).kind()) {
                    neighbours.add(pairing.exchanged(id, parts.get(j).id()));
                }
            }
        }
        return neighbours;
    }

    /** How much differs under a pairing; turning a cell is cheaper than rejoining both its ends. */
    private int cost(Pairing pairing) {
        int cost = 0;
        for (BuildDifference difference : Builds.differences(first, second, pairing)) {
            cost += difference instanceof BuildDifference.JointOnly
                    ? 4
                    : difference instanceof BuildDifference.PartOnly ? 3 : COST_OF_TURNING;
        }
        return cost;
    }
}
