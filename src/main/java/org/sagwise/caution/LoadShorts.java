package org.sagwise.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.caution.circuit.Branch;
import org.sagwise.reading.CellReading;

/**
 * Coils of so few ohms that they are a short: side by side below {@link #LEAST_SENSIBLE_OHM}, and a
 * cell over its limit for it. Several cells side by side may feed so low a coil within their
 * limits; then it is unusual and no short.
 */
final class LoadShorts implements HazardRule {

    /**
     * Lowest load that makes sense, Ω: below it standard tests speak of an external short circuit
     * (UN Manual of Tests and Criteria, 38.3 test T.5: less than 0.1 Ω; IEC 62133: 80 ± 20 mΩ; as
     * quoted by test houses). Hardly anyone winds a coil below it (common practice, no source).
     */
    static final double LEAST_SENSIBLE_OHM = 0.1;

    @Override
    public List<Caution> check(Evidence evidence) {
        List<Caution> found = new ArrayList<>();
        for (List<String> coils : coilsSideBySide(evidence)) {
            for (Look look : evidence.looks()) {
                double ohm = together(look, coils);
                Optional<CellReading> worst = overLimit(evidence, look, coils.get(0));
                if (ohm < LEAST_SENSIBLE_OHM && worst.isPresent() && carries(look, coils)) {
                    found.add(caution(evidence, look, coils, worst.get(), ohm));
                    break;
                }
            }
        }
        return found;
    }

    private static List<List<String>> coilsSideBySide(Evidence evidence) {
        Map<List<Integer>, List<String>> groups = new LinkedHashMap<>();
        for (Branch load : evidence.held().circuit().loads()) {
            if (evidence.bench().coils().containsKey(load.part()) && !load.isShorted()) {
                List<Integer> nets = List.of(Math.min(load.from(), load.to()), Math.max(load.from(), load.to()));
                groups.computeIfAbsent(nets, key -> new ArrayList<>()).add(load.part());
            }
        }
        return List.copyOf(groups.values());
    }

    private static double together(Look look, List<String> coils) {
        return 1
                / coils.stream()
                        .mapToDouble(
                                id -> 1 / look.readings().coil(id).orElseThrow().ohm())
                        .sum();
    }

    private static boolean carries(Look look, List<String> coils) {
        return coils.stream().anyMatch(id -> Math.abs(look.currentA(id)) > Look.NO_CURRENT_A);
    }

    private static Optional<CellReading> overLimit(Evidence evidence, Look look, String coil) {
        int island = look.island(coil);
        return look.cells().values().stream()
                .filter(cell -> cell.currentA() > cell.limitA())
                .filter(cell -> look.island(cell.id()) == island)
                .filter(cell -> !evidence.isInConflict(cell.id()))
                .max(Comparator.comparingDouble(CellReading::loadFraction));
    }

    private static Caution caution(Evidence evidence, Look look, List<String> coils, CellReading worst, double ohm) {
        return new CautionBuilder(evidence, PackShorted.ID, Signal.DANGER)
                .when(look.when())
                .parts(coils)
                .parts(worst.id())
                .measured(worst.currentA(), worst.limitA(), "A")
                .variant("load")
                .names("coils", coils)
                .names("cell", List.of(worst.id()))
                .detail("loadOhm", ohm)
                .detail("leastOhm", LEAST_SENSIBLE_OHM)
                .build();
    }
}
