package org.sagwise.hazard;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.sagwise.circuit.Branch;
import org.sagwise.circuit.Netlist;
import org.sagwise.circuit.Row;

/**
 * A cell of a row stands the other way round than most. Against as many it leaves about 0 V and
 * hardly a current; outvoted, it is pushed backwards through, and so charged, by the others. What
 * is pushed into it is held against its charge limit.
 */
final class ReversedInSeries implements HazardRule {

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.rows().stream()
                .filter(Row::isOpposed)
                .filter(row -> row.sources().stream().anyMatch(context::isCell))
                .filter(row -> !context.isInConflict(row.sources().get(0).part()))
                .filter(row -> !isBegun(context.held().circuit(), row))
                .map(row -> caution(context, context.held(), row))
                .toList();
    }

    /**
     * Whether just two like poles are joined and nothing hangs at one of the others yet. Whoever
     * builds a pair side by side begins so, and has turned nothing round.
     */
    private static boolean isBegun(Netlist circuit, Row row) {
        List<String> own = row.sources().stream().map(Branch::part).toList();
        return row.groups().size() == 2
                && row.ends().stream()
                        .anyMatch(net -> circuit.terminals(net).stream().allMatch(end -> own.contains(end.part())));
    }

    private static CautionBuilder caution(HazardContext context, SwitchView held, Row row) {
        List<String> turned = row.turned(held.circuit().sources()).stream()
                .flatMap(group -> group.sources().stream())
                .map(Branch::part)
                .toList();
        List<String> others = row.sources().stream()
                .map(Branch::part)
                .filter(id -> !turned.contains(id))
                .toList();
        Optional<CellView> charged = mostCharged(held, row);
        double pushedA = charged.map(cell -> Math.max(0, -cell.currentA())).orElse(0.0);
        double limitA = charged.map(cell -> cell.spec().chargeLimitA()).orElse(Double.NaN);
        return new CautionBuilder(context, signal(row, charged, pushedA, limitA))
                .when(held.when())
                .parts(turned)
                .parts(others)
                .measured(pushedA, limitA, "A")
                .variant(variant(row, pushedA, limitA))
                .names("turned", turned)
                .names("rest", others)
                .detail("leftV", Math.abs(leftV(context, row)));
    }

    private static String variant(Row row, double pushedA, double chargeLimitA) {
        if (row.climb() != 0) {
            return "outvoted";
        }
        return pushedA > chargeLimitA ? "uneven" : "cancel";
    }

    private static Signal signal(Row row, Optional<CellView> charged, double pushedA, double chargeLimitA) {
        return row.climb() == 0 && !(pushedA > chargeLimitA)
                ? Signal.NOTICE
                : Gravity.pushedIn(pushedA, charged.map(CellView::limitA).orElse(Double.NaN));
    }

    private static Optional<CellView> mostCharged(SwitchView held, Row row) {
        return row.sources().stream()
                .map(source -> held.cell(source.part()))
                .filter(Objects::nonNull)
                .min(Worst.least(CellView::currentA));
    }

    /** Rest voltage of the whole row: groups side by side count with their first source. */
    private static double leftV(HazardContext context, Row row) {
        return row.groups().stream()
                .mapToDouble(group ->
                        group.up() * restV(context, group.sources().get(0).part()))
                .sum();
    }

    private static double restV(HazardContext context, String source) {
        CellView cell = context.held().cell(source);
        return cell == null ? context.bench().values(source).need("volts") : cell.restV();
    }
}
