package org.sagwise.picture.layout;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Whether the cells that hang together all climb the same way. A long row that is joined to nothing
 * else is laid out in two columns, one up and one down; that turns cells in the picture, but none
 * in the pack.
 */
public final class PackSense {

    private final Joints joints;
    private final List<Part> cells;
    private final Map<Integer, Integer> levels = new HashMap<>();

    private PackSense(Scenario scenario) {
        joints = Joints.of(scenario);
        cells = scenario.partsOf(PartKind.CELL);
    }

    /**
     * Whether every cell of a pack stands the same way: from plus to minus it goes down one step,
     * and all that is on one step is joined.
     *
     * @param cell id of a cell of the pack
     */
    public static boolean isOne(Scenario scenario, String cell) {
        return scenario.part(cell).filter(new PackSense(scenario)::isOne).isPresent();
    }

    private boolean isOne(Part first) {
        Deque<Integer> waiting = new ArrayDeque<>(List.of(minus(first)));
        levels.put(minus(first), 0);
        while (!waiting.isEmpty()) {
            int net = waiting.remove();
            for (Part cell : cells) {
                boolean climbs = minus(cell) == net;
                if (climbs || plus(cell) == net) {
                    int other = climbs ? plus(cell) : minus(cell);
                    int level = levels.get(net) + (climbs ? 1 : -1);
                    Integer known = levels.putIfAbsent(other, level);
                    if (known == null) {
                        waiting.add(other);
                    } else if (known != level) {
                        return false;
                    }
                }
            }
        }
        return new HashSet<>(levels.values()).size() == levels.size();
    }

    private int plus(Part cell) {
        return joints.of(cell.terminal("+"));
    }

    private int minus(Part cell) {
        return joints.of(cell.terminal("-"));
    }
}
