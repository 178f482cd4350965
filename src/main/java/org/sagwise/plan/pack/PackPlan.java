package org.sagwise.plan.pack;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pack.PackChoice.Verdict;
import org.sagwise.plan.pairing.Fitness;

/**
 * What came of a wish.
 *
 * @param wish the wish
 * @param choices every layout that could be built, the best first
 * @param refused those that could not
 * @param leftOut own cells that go into no pack, and why
 * @param isComplete whether all were looked at; not if somebody called it off
 */
public record PackPlan(
        PackWish wish,
        List<PackChoice> choices,
        List<Refusal> refused,
        Map<OwnCell, Fitness> leftOut,
        boolean isComplete) {

    /** Equal shares of the limit to this many parts count as equal. */
    private static final double ALIKE = 100;

    public PackPlan {
        choices = choices.stream().sorted(order(wish)).toList();
        refused = List.copyOf(refused);
    }

    /**
     * A layout that cannot be, and why.
     *
     * @param number most watts it can give, or how many cells there are
     */
    public record Refusal(String cell, int rows, int side, Why why, double number) {}

    /** Why a layout cannot be. */
    public enum Why {
        /** No coil takes so many watts from it. */
        TOO_MANY_WATTS,
        /** There are not so many cells. */
        TOO_FEW_CELLS,
        /** It gives nothing: a guard opens at once, or the board does not start. */
        GIVES_NOTHING
    }

    /**
     * Those that fit first. With a time wished, of them the one that needs the fewest cells, then the one that asks least
     * of them; without one, the one that lasts longest.
     */
    private static Comparator<PackChoice> order(PackWish wish) {
        Comparator<PackChoice> verdict = Comparator.comparing(PackChoice::verdict);
        Comparator<PackChoice> share = Comparator.comparingDouble(choice -> Math.rint(choice.share() * ALIKE));
        Comparator<PackChoice> time = Comparator.comparingDouble(
                choice -> -choice.course().map(PackChoice.Course::timeS).orElse(0.0));
        return wish.lastsS().isPresent()
                ? verdict.thenComparing(PackChoice::cells).thenComparing(share).thenComparing(time)
                : verdict.thenComparing(time).thenComparing(share);
    }

    /** The best that fits. */
    public Optional<PackChoice> best() {
        return choices.stream()
                .filter(choice -> choice.verdict() == Verdict.FITS)
                .findFirst();
    }

    /** Where nothing fits, what comes nearest: the one that lasts longest of those within limits, else that with least load. */
    public Optional<PackChoice> nearest() {
        return choices.stream()
                .filter(choice -> choice.verdict() == Verdict.TOO_SHORT || choice.verdict() == Verdict.UNKNOWN)
                .max(Comparator.comparingDouble(
                        choice -> choice.course().map(PackChoice.Course::timeS).orElse(0.0)))
                .or(() -> choices.stream()
                        .filter(choice -> !Double.isNaN(choice.share()))
                        .min(Comparator.comparingDouble(PackChoice::share)));
    }

    /** How many were not run, since a cell was over its limit at once. */
    public long notRun() {
        return choices.stream().filter(choice -> choice.course().isEmpty()).count();
    }

    /** Most watts that any refused layout could give; NaN where none was refused for watts. */
    public double mostW() {
        return refused.stream()
                .filter(it -> it.why() == Why.TOO_MANY_WATTS)
                .mapToDouble(Refusal::number)
                .max()
                .orElse(Double.NaN);
    }
}
