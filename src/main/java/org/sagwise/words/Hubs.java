package org.sagwise.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Finds to which cell of a plate, and to which of several coils side by side, the rest of a bench is joined.
 *
 * @param own terminals of the bench, by those of a bench that is built of the recipe
 */
record Hubs(Scenario bench, Recipe recipe, Map<TerminalRef, TerminalRef> own) {

    /** A cell of a plate before the one to which all are joined has a joint of its own, and so has a coil. */
    void find() {
        for (int row = 0; row < recipe.rows() && recipe.side() > 1; row++) {
            int first = recipe.first(row);
            List<List<TerminalRef>> ends = new ArrayList<>();
            for (int cell = first; cell < first + recipe.side(); cell++) {
                String letter = BenchBuilder.letter(cell);
                ends.add(Stream.of(
                                new TerminalRef(letter, "+"),
                                new TerminalRef(letter, "-"),
                                new TerminalRef(BenchBuilder.guardId(cell), "out"))
                        .map(own::get)
                        .filter(Objects::nonNull)
                        .toList());
            }
            for (int i = 0; i < busiest(ends); i++) {
                recipe.cellJoints().put(first + i, 0.0);
            }
        }
        if (recipe.coilsLie().equals(Optional.of(Recipe.Coils.SIDE_BY_SIDE))) {
            List<List<TerminalRef>> ends = new ArrayList<>();
            for (int i = 0; i < recipe.coils().size(); i++) {
                ends.add(List.of(own.get(new TerminalRef(BenchBuilder.coilId(i, recipe), "1"))));
            }
            for (int i = 0; i < busiest(ends); i++) {
                recipe.coilJoints().put(i, 0.0);
            }
        }
    }

    private int busiest(List<List<TerminalRef>> ends) {
        int best = 0;
        for (int i = 1; i < ends.size(); i++) {
            best = joints(ends.get(i)) > joints(ends.get(best)) ? i : best;
        }
        return best;
    }

    private long joints(List<TerminalRef> ends) {
        return bench.links().stream()
                .filter(link -> ends.contains(link.from()) || ends.contains(link.to()))
                .count();
    }
}
