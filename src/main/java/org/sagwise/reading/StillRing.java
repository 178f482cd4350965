package org.sagwise.reading;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A ring through a load where no current shows the way, as with two equal cells that face each
 * other: the stairs go up as far as they go down, and that is the lesson.
 */
final class StillRing {

    private final Ways ways;

    StillRing(Ways ways) {
        this.ways = ways;
    }

    /** The shortest ring through the first of these loads that lies in one. */
    Optional<List<Ways.Way>> through(List<Ways.Way> loads) {
        return loads.stream().flatMap(load -> ring(load).stream()).findFirst();
    }

    private Optional<List<Ways.Way>> ring(Ways.Way load) {
        Map<Integer, Ways.Way> arrivedBy = new HashMap<>();
        Deque<Integer> next = new ArrayDeque<>(List.of(load.to()));
        while (!next.isEmpty() && !arrivedBy.containsKey(load.from())) {
            int node = next.remove();
            for (Ways.Way way : ways.at(node)) {
                int across = way.across(node);
                boolean isNew = across != load.to() && !arrivedBy.containsKey(across);
                if (isNew && way.element() != load.element()) {
                    arrivedBy.put(across, way.from() == node ? way : way.turned());
                    next.add(across);
                }
            }
        }
        return arrivedBy.containsKey(load.from()) ? Optional.of(closed(load, arrivedBy)) : Optional.empty();
    }

    private static List<Ways.Way> closed(Ways.Way load, Map<Integer, Ways.Way> arrivedBy) {
        List<Ways.Way> ring = Ways.between(load.to(), load.from(), arrivedBy);
        ring.add(load);
        return ring;
    }
}
