package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.circuit.Branch;

/**
 * Coils of so few ohms that they are a short: side by side below {@link #LEAST_SENSIBLE_OHM}, and a
 * cell over its limit for it. Several cells side by side may feed so low a coil within their
 * limits; then it is unusual and no short.
 */
final class LoadShorts {

    /**
     * Lowest load that makes sense, Ω: below it standard tests speak of an external short circuit
     * (UN Manual of Tests and Criteria, 38.3 test T.5: less than 0.1 Ω; IEC 62133: 80 ± 20 mΩ; as
     * quoted by test houses). Hardly anyone winds a coil below it (common practice, no source).
     */
    static final double LEAST_SENSIBLE_OHM = 0.1;

    private LoadShorts() {}

    static List<CautionBuilder> in(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        for (List<String> coils : coilsSideBySide(context)) {
            for (SwitchView view : context.views()) {
                double ohm = together(view, coils);
                Optional<CellView> worst = overLimit(context, view, coils.get(0));
                if (ohm < LEAST_SENSIBLE_OHM && worst.isPresent() && carries(view, coils)) {
                    found.add(caution(context, view, coils, worst.get(), ohm));
                    break;
                }
            }
        }
        return found;
    }

    private static List<List<String>> coilsSideBySide(HazardContext context) {
        Map<List<Integer>, List<String>> groups = new LinkedHashMap<>();
        for (Branch load : context.held().circuit().loads()) {
            if (context.bench().coils().containsKey(load.part()) && !load.isShorted()) {
                List<Integer> nets = List.of(Math.min(load.from(), load.to()), Math.max(load.from(), load.to()));
                groups.computeIfAbsent(nets, key -> new ArrayList<>()).add(load.part());
            }
        }
        return List.copyOf(groups.values());
    }

    private static double together(SwitchView view, List<String> coils) {
        return 1
                / coils.stream()
                        .mapToDouble(
                                id -> 1 / view.readings().coil(id).orElseThrow().ohm())
                        .sum();
    }

    private static boolean carries(SwitchView view, List<String> coils) {
        return coils.stream().anyMatch(id -> Math.abs(view.currentA(id)) > SwitchView.NO_CURRENT_A);
    }

    private static Optional<CellView> overLimit(HazardContext context, SwitchView view, String coil) {
        int island = view.island(coil);
        return view.cells().values().stream()
                .filter(cell -> !(cell.currentA() <= cell.limitA()))
                .filter(cell -> view.island(cell.id()) == island)
                .filter(cell -> !context.isInConflict(cell.id()))
                .min(Worst.first(CellView::loadFraction));
    }

    private static CautionBuilder caution(
            HazardContext context, SwitchView view, List<String> coils, CellView worst, double ohm) {
        return new CautionBuilder(context, Signal.DANGER)
                .when(view.when())
                .parts(coils)
                .parts(worst.id())
                .measured(worst.currentA(), worst.limitA(), "A")
                .variant("load")
                .names("coils", coils)
                .names("cell", List.of(worst.id()))
                .detail("loadOhm", ohm)
                .detail("leastOhm", LEAST_SENSIBLE_OHM);
    }
}
