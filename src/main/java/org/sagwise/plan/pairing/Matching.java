package org.sagwise.plan.pairing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.part.Catalogue;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.OwnCell;

/**
 * Sets of cells that differ least. Only cells of one make come together.
 *
 * @param wish what was looked for
 * @param sets what was found, the most alike first
 * @param unfit cells that belong into no new set, and why
 * @param left cells that are fit, but for which no full set is left
 */
public record Matching(PairingWish wish, List<MatchedSet> sets, Map<OwnCell, Fitness> unfit, List<OwnCell> left) {

    private static final long SEED = 20_261_130;

    /** The best sets of the cells of a drawer. */
    public static Matching of(Drawer drawer, PairingWish wish, Catalogue catalogue) {
        Map<OwnCell, Fitness> unfit = new LinkedHashMap<>();
        Map<Keys, List<OwnCell>> makes = new LinkedHashMap<>();
        for (OwnCell cell : drawer.cells()) {
            Fitness.against(cell, wish, catalogue)
                    .ifPresentOrElse(
                            why -> unfit.put(cell, why),
                            () -> makes.computeIfAbsent(make(cell), name -> new ArrayList<>())
                                    .add(cell));
        }
        List<MatchedSet> sets = new ArrayList<>();
        List<OwnCell> left = new ArrayList<>();
        for (List<OwnCell> cells : makes.values()) {
            if (cells.size() < wish.size()) {
                cells.forEach(cell -> unfit.put(cell, Fitness.ALONE));
            } else {
                match(cells, wish, sets, left);
            }
        }
        sets.sort(Comparator.comparingDouble(MatchedSet::cost));
        return new Matching(wish, List.copyOf(sets), unfit, List.copyOf(left));
    }

    /** What a cell is, apart from what was measured on it. */
    private static Keys make(OwnCell cell) {
        return cell.model().map(id -> cell.figures().with("model", id)).orElse(cell.figures());
    }

    private static void match(List<OwnCell> cells, PairingWish wish, List<MatchedSet> sets, List<OwnCell> left) {
        PartitionCost cost = new PartitionCost(
                cells.stream().mapToDouble(it -> it.capacityAh().orElseThrow()).toArray(),
                cells.stream()
                        .mapToDouble(it -> it.resistanceOhm().orElseThrow())
                        .toArray(),
                wish);
        int[] order = wish.size() == 2 ? PairMatching.best(cost) : SetSearch.best(cost, SEED);
        int inSets = order.length / wish.size() * wish.size();
        for (int from = 0; from < inSets; from += wish.size()) {
            List<OwnCell> some = new ArrayList<>();
            for (int i = 0; i < wish.size(); i++) {
                some.add(cells.get(order[from + i]));
            }
            sets.add(MatchedSet.of(some, wish));
        }
        for (int i = inSets; i < order.length; i++) {
            left.add(cells.get(order[i]));
        }
    }
}
