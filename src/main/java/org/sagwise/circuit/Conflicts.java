package org.sagwise.circuit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds out how the sources of a pack stand against each other.
 *
 * <p>A way round through sources alone must climb as often as it descends. Where it does not,
 * nothing but internal resistance and joints limits the current. Two sources that close on each
 * other, plus to minus on both sides, are a reversed pair side by side and a shorted row of two at
 * once: which of the two a builder meant shows where the load hangs.
 */
public final class Conflicts {

    private final Pack pack;
    private final Netlist held;
    private final List<Loop> wrong;

    private Conflicts(Pack pack, Netlist held) {
        this.pack = pack;
        this.held = held;
        this.wrong = pack.loops().stream().filter(loop -> loop.climb() != 0).toList();
    }

    /**
     * The conflict in a pack; empty in a sound one.
     *
     * @param held the circuit with the button held, in which loads show where they hang
     */
    public static Optional<Conflict> in(Pack pack, Netlist held) {
        Conflicts conflicts = new Conflicts(pack, held);
        return conflicts.wrong.isEmpty() ? Optional.empty() : Optional.of(conflicts.judge());
    }

    private Conflict judge() {
        List<Loop> shorted = wrong.stream().filter(this::isShort).toList();
        if (!shorted.isEmpty()) {
            return new Conflict(Conflict.Kind.SHORTED, List.of(), besides(sourcesOf(shorted)));
        }
        List<Branch> members = besides(sourcesOf(wrong));
        List<Branch> turned = Turned.among(pack, members, held);
        return turned.isEmpty()
                ? new Conflict(Conflict.Kind.UNEQUAL_ROWS, List.of(), members)
                : new Conflict(Conflict.Kind.REVERSED, turned, members);
    }

    private boolean isShort(Loop loop) {
        return loop.isRing() && (loop.steps().size() != 2 || isBypass(loop));
    }

    /** Whether a load has both its ends on one side of the ring and none hangs across it. */
    private boolean isBypass(Loop ring) {
        Branch member = held.branch(ring.steps().get(0).source().part()).orElseThrow();
        boolean bypassed = false;
        for (Branch load : held.loads()) {
            if (!load.isShorted() && load.isBeside(member)) {
                return false;
            }
            bypassed |= load.isShorted() && (load.from() == member.from() || load.from() == member.to());
        }
        return bypassed;
    }

    private static Set<Branch> sourcesOf(List<Loop> loops) {
        Set<Branch> sources = new LinkedHashSet<>();
        loops.forEach(loop -> loop.steps().forEach(step -> sources.add(step.source())));
        return sources;
    }

    /** These sources and those that stand beside one of them, in file order. */
    private List<Branch> besides(Set<Branch> sources) {
        Set<Long> pairs = new LinkedHashSet<>();
        sources.forEach(source -> pairs.add(pair(source)));
        return pack.sources().stream()
                .filter(source -> pairs.contains(pair(source)))
                .toList();
    }

    private static long pair(Branch source) {
        long low = Math.min(source.from(), source.to());
        return low << Integer.SIZE | Math.max(source.from(), source.to());
    }
}
