package org.sagwise.plan.pairing;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.sagwise.plan.drawer.OwnCell;

/**
 * Cells that belong together.
 *
 * @param cells the cells, that of most capacity first
 * @param capacitySpread highest less lowest capacity as a share of their mean
 * @param resistanceSpread the same of internal resistance
 * @param cost both, weighed and added up: what is made least
 */
public record MatchedSet(List<OwnCell> cells, double capacitySpread, double resistanceSpread, double cost) {

    /** What these cells come to as a set; all of them measured. */
    public static MatchedSet of(List<OwnCell> cells, PairingWish wish) {
        double capacity = spread(cells, cell -> cell.capacityAh().orElseThrow());
        double resistance = spread(cells, cell -> cell.resistanceOhm().orElseThrow());
        List<OwnCell> sorted = cells.stream()
                .sorted((a, b) -> Double.compare(
                        b.capacityAh().orElseThrow(), a.capacityAh().orElseThrow()))
                .toList();
        return new MatchedSet(
                sorted, capacity, resistance, wish.capacityWeight() * capacity + wish.resistanceWeight() * resistance);
    }

    private static double spread(List<OwnCell> cells, ToDoubleFunction<OwnCell> quantity) {
        double[] values = cells.stream().mapToDouble(quantity).toArray();
        return PartitionCost.spread(values, values.length);
    }

    public List<String> marks() {
        return cells.stream().map(OwnCell::mark).toList();
    }
}
