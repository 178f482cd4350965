package org.sagwise.circuit;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Names the sources whose turning would set a pack right. */
final class Turned {

    private Turned() {}

    /**
     * The one source whose turning sets every loop right; of several the one that then leaves most
     * for the loads, and of equals the last. Where no single one does: of sources all side by side
     * those that are fewer.
     *
     * @param held the circuit with the button held, in which loads show where they hang
     */
    static List<Branch> among(Pack pack, List<Branch> members, Netlist held) {
        return cures(pack).stream()
                .filter(members::contains)
                .max(Comparator.<Branch>comparingInt(member -> Heights.acrossLoads(pack, member, held))
                        .thenComparingInt(members::indexOf))
                .map(List::of)
                .orElseGet(() -> fewer(members));
    }

    /** Sources each of which sets all loops right if it alone is turned. */
    private static Set<Branch> cures(Pack pack) {
        Set<Branch> cures = new LinkedHashSet<>(pack.sources());
        for (Loop loop : pack.loops()) {
            if (loop.climb() == 0) {
                loop.steps().forEach(step -> cures.remove(step.source()));
            } else {
                cures.retainAll(cures(loop));
            }
        }
        return cures;
    }

    private static Set<Branch> cures(Loop loop) {
        return loop.steps().stream()
                .filter(step -> loop.climb() == 2 * step.up())
                .map(Loop.Step::source)
                .collect(Collectors.toSet());
    }

    private static List<Branch> fewer(List<Branch> members) {
        Branch first = members.get(0);
        if (!members.stream().allMatch(first::isBeside)) {
            return List.of();
        }
        List<Branch> along = side(members, first.from());
        List<Branch> against = side(members, first.to());
        return along.size() < against.size() ? along : against;
    }

    private static List<Branch> side(List<Branch> members, int from) {
        Stream<Branch> side = members.stream().filter(member -> member.from() == from);
        return side.toList();
    }
}
