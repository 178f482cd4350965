package org.sagwise.plan.pack;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerBench;
import org.sagwise.plan.drawer.OwnCell;

/**
 * A kind of cell that may be taken: as many as wanted of a model, or those that somebody has.
 *
 * @param name what it is called: a model's id
 * @param pool keys of those there are, without charge; one for all where there is no end of them
 * @param endless whether there is no end of them
 */
public record PackCell(String name, List<Keys> pool, boolean endless) {

    private static final String CAPACITY = "capacity_mAh";

    public PackCell {
        pool = List.copyOf(pool);
        if (pool.isEmpty()) {
            throw new IllegalArgumentException("there is no cell of " + name);
        }
    }

    /** As many new ones of a model as wanted. */
    public static PackCell of(PartModel model) {
        return new PackCell(model.id(), List.of(Keys.of("model", model.id())), true);
    }

    /**
     * What is in a drawer and still used, a kind for each model, or make where there is no model; what nothing is known
     * of that a bench needs is left out.
     */
    public static List<PackCell> of(Drawer drawer, Catalogue catalogue) {
        Map<String, List<Keys>> kinds = new LinkedHashMap<>();
        for (OwnCell own : drawer.inUse()) {
            if (DrawerBench.canLie(own)) {
                Keys keys = DrawerBench.keys(own, drawer, catalogue).without("charge", "rest_V");
                kinds.computeIfAbsent(own.model().orElse(own.name()), name -> new ArrayList<>())
                        .add(keys);
            }
        }
        return kinds.entrySet().stream()
                .map(kind -> new PackCell(kind.getKey(), kind.getValue(), false))
                .toList();
    }

    /** Whether a model is one that nobody would choose on purpose: worn, or sold for what it is not. */
    public static boolean isPoor(PartModel model) {
        return model.keys().has("claimed_A") || model.keys().has("claimed_mAh");
    }

    /**
     * So many of them: of those that somebody has, the ones whose capacities are most alike, of equally alike ones the
     * larger; empty where there are too few.
     */
    Optional<List<Keys>> take(int count) {
        if (endless) {
            return Optional.of(Collections.nCopies(count, pool.get(0)));
        }
        if (pool.size() < count) {
            return Optional.empty();
        }
        List<Keys> sorted = new ArrayList<>(pool);
        sorted.sort(Comparator.comparingDouble((Keys keys) -> keys.number(CAPACITY, 0))
                .reversed());
        int best = 0;
        for (int from = 1; from + count <= sorted.size(); from++) {
            best = spread(sorted, from, count) < spread(sorted, best, count) ? from : best;
        }
        return Optional.of(List.copyOf(sorted.subList(best, best + count)));
    }

    private static double spread(List<Keys> sorted, int from, int count) {
        return sorted.get(from).number(CAPACITY, 0)
                - sorted.get(from + count - 1).number(CAPACITY, 0);
    }
}
