package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** The readings of cells, pack by pack, so that one thing that befalls a pack is told once. */
final class PackCells {

    private final SwitchView atRest;
    private final SwitchView held;
    private final List<List<CellView>> resting = new ArrayList<>();
    private final List<List<CellView>> pressed = new ArrayList<>();

    /**
     * Gathers the readings of the cells of each pack.
     *
     * @param packs ids of the cells of each pack
     */
    PackCells(SwitchView atRest, SwitchView held, List<List<String>> packs) {
        this.atRest = atRest;
        this.held = held;
        for (List<String> cells : packs) {
            resting.add(cells.stream().map(atRest::cell).toList());
            pressed.add(cells.stream().map(held::cell).toList());
        }
    }

    /**
     * Cells of one pack to which the same happens.
     *
     * @param view in which position of the button
     * @param worstFirst the cells
     */
    record Hit(SwitchView view, List<CellView> worstFirst) {

        private static Hit of(SwitchView view, List<CellView> cells, ToDoubleFunction<CellView> size) {
            cells.sort(Worst.first(size));
            return new Hit(view, cells);
        }

        CellView worst() {
            return worstFirst.get(0);
        }

        List<String> ids() {
            return worstFirst.stream().map(CellView::id).toList();
        }
    }

    /** See {@link HazardContext#cells}. */
    List<Hit> find(Predicate<CellView> happens, ToDoubleFunction<CellView> size) {
        List<Hit> found = new ArrayList<>();
        for (int i = 0; i < resting.size(); i++) {
            List<CellView> first = filter(resting.get(i), happens);
            if (!first.isEmpty()) {
                found.add(Hit.of(atRest, first, size));
                continue;
            }
            List<CellView> second = filter(pressed.get(i), happens);
            if (!second.isEmpty()) {
                found.add(Hit.of(held, second, size));
            }
        }
        return found;
    }

    /** As most rules find nothing on most benches, a list is made only where there is something. */
    private static List<CellView> filter(List<CellView> cells, Predicate<CellView> happens) {
        List<CellView> found = List.of();
        for (CellView cell : cells) {
            if (happens.test(cell)) {
                found = found.isEmpty() ? new ArrayList<>() : found;
                found.add(cell);
            }
        }
        return found;
    }
}
