package org.sagwise.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Looks for a way round through a load that is complete but for gaps: open switches, melted fuses,
 * meters that let nothing through. A way counts only if a source drives it, that is, if it enters
 * and leaves some cluster at different nets.
 */
final class Blockers {

    private final Netlist circuit;
    private final Clusters clusters;
    private final Branch load;

    Blockers(Netlist circuit, Clusters clusters, Branch load) {
        this.circuit = circuit;
        this.clusters = clusters;
        this.load = load;
    }

    private record Place(int net, boolean driven, List<String> gaps) {}

    private record Visited(int cluster, boolean driven) {}

    /** Ids of the gaps on the shortest such way from the second end of the load to its first. */
    List<String> find() {
        int goal = clusters.of(load.from());
        Set<Visited> seen = new HashSet<>();
        Deque<Place> open = new ArrayDeque<>(List.of(new Place(load.to(), false, List.of())));
        while (!open.isEmpty()) {
            Place place = open.remove();
            int cluster = clusters.of(place.net());
            if (cluster == goal && (place.driven() || place.net() != load.from())) {
                return place.gaps();
            }
            if (seen.add(new Visited(cluster, place.driven()))) {
                leave(place, cluster, open);
            }
        }
        return List.of();
    }

    private void leave(Place place, int cluster, Deque<Place> open) {
        for (Branch gap : circuit.gaps()) {
            if (clusters.of(gap.from()) == cluster) {
                open.add(next(place, gap.from(), gap.to(), gap.part()));
            } else if (clusters.of(gap.to()) == cluster) {
                open.add(next(place, gap.to(), gap.from(), gap.part()));
            }
        }
        for (Branch idle : clusters.idleAt(cluster)) {
            if (!clusters.areBeside(idle, load)) {
                boolean forth = clusters.of(idle.from()) == cluster;
                int exit = forth ? idle.from() : idle.to();
                open.add(next(place, exit, idle.across(exit), ""));
            }
        }
    }

    private static Place next(Place place, int exit, int entry, String gap) {
        List<String> gaps = new ArrayList<>(place.gaps());
        if (!gap.isEmpty()) {
            gaps.add(gap);
        }
        return new Place(entry, place.driven() || exit != place.net(), gaps);
    }
}
