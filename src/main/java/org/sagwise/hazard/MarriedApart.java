package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.circuit.Pack;
import org.sagwise.scenario.Part;

/**
 * Cells that somebody marked as married, in a pack with others or without their fellows. Only what
 * marks say counts: a cell without any may be a fellow whose mark nobody wrote down.
 */
final class MarriedApart implements HazardRule {

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        for (Pack pack : context.held().packs()) {
            List<String> cells = context.cellsOf(pack);
            sets(context, cells).entrySet().stream()
                    .flatMap(set -> check(context, set.getKey(), set.getValue(), cells).stream())
                    .findFirst()
                    .ifPresent(found::add);
        }
        return found;
    }

    /** The cells of each set in a pack. */
    private static Map<String, List<String>> sets(HazardContext context, List<String> cells) {
        Map<String, List<String>> sets = new LinkedHashMap<>();
        for (String cell : cells) {
            set(context.part(cell))
                    .ifPresent(set ->
                            sets.computeIfAbsent(set, name -> new ArrayList<>()).add(cell));
        }
        return sets;
    }

    private static Optional<String> set(Part cell) {
        return cell.keys().text("married");
    }

    private static Optional<CautionBuilder> check(
            HazardContext context, String set, List<String> fellows, List<String> cells) {
        double size = fellows.stream()
                .mapToDouble(cell -> context.part(cell).keys().number("married_cells", 0))
                .max()
                .orElse(0);
        boolean complete = size > 0 && fellows.size() >= size;
        Optional<String> stranger = cells.stream()
                .filter(cell -> !fellows.contains(cell))
                .filter(cell -> complete || isMarked(context.part(cell)))
                .findFirst();
        if (stranger.isPresent()) {
            return Optional.of(caution(context, set, fellows.get(0), stranger.get())
                    .variant("mixed")
                    .names("high", List.of(stranger.get())));
        }
        boolean used =
                fellows.stream().anyMatch(cell -> context.held().cell(cell).gives());
        return size > cells.size() && used
                ? Optional.of(caution(context, set, fellows.toArray(String[]::new))
                        .variant("apart")
                        .detail("of", String.valueOf((int) size)))
                : Optional.empty();
    }

    private static boolean isMarked(Part cell) {
        return cell.keys().has("mark") || cell.keys().has("married");
    }

    private static CautionBuilder caution(HazardContext context, String set, String... cells) {
        return new CautionBuilder(context, Signal.CAUTION)
                .parts(cells)
                .names("low", List.of(cells[0]))
                .detail("set", set);
    }
}
