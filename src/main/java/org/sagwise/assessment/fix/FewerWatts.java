package org.sagwise.assessment.fix;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.hazard.LookAhead;
import org.sagwise.part.BoardSpec;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.SetPartKeys;

/** Sets a regulated board to fewer watts: to so many that everything bears the current. */
final class FewerWatts implements FixRule {

    private static final double LEAST_W = 0.1;

    /** What only time shows takes too long to search: this share of the watts is tried. */
    private static final double AHEAD_SHARE = 0.5;

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        Bench bench = assessment.bench();
        List<Part> boards = bench.scenario().partsOf(PartKind.BOARD);
        if (boards.size() != 1) {
            return List.of();
        }
        Part board = boards.get(0);
        double powerW = bench.spec(board.id(), BoardSpec.class).powerW();
        OptionalDouble most = LookAhead.atS(caution).isPresent()
                ? OptionalDouble.of(AHEAD_SHARE * powerW)
                : Tuning.nearest(
                        powerW,
                        LEAST_W,
                        watts -> isBearable(bench, with(board, watts).apply(bench.scenario()), caution.id()));
        if (most.isEmpty()) {
            return List.of();
        }
        double watts =
                most.getAsDouble() >= 1 ? Math.floor(most.getAsDouble()) : Math.floor(most.getAsDouble() * 10) / 10;
        return List.of(new Fix(
                FixKind.FEWER_WATTS,
                List.of(List.of(board), new Fix.Quantity(watts, Unit.WATT)),
                Set.of(board.id()),
                with(board, watts)));
    }

    private static boolean isBearable(Bench bench, Scenario scenario, String cured) {
        return Hazards.check(Bench.of(scenario, bench.catalogue())).stream()
                .map(Caution::id)
                .noneMatch(
                        id -> id.startsWith("board-") || MoreOhms.OF_TOO_MUCH_CURRENT.contains(id) || id.equals(cured));
    }

    private static Edit with(Part board, double watts) {
        return SetPartKeys.set(board.id(), "power_W", watts);
    }
}
