package org.sagwise.ui.desk;

import java.util.List;
import org.sagwise.picture.look.Series;
import org.sagwise.picture.plot.Axis;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.Limit;
import org.sagwise.picture.plot.Mark;
import org.sagwise.plan.pack.PackChoice;
import org.sagwise.plan.pack.PackChoice.Verdict;
import org.sagwise.plan.pack.PackWords;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.ui.text.Wording;

/** What trades against what: how long a layout lasts, against how much it asks of a cell. */
final class ChoiceChart {

    private static final double ROOM = 1.08;
    private static final double S_PER_H = 3600;

    private ChoiceChart() {}

    /** The layout that a mark stands for. */
    static boolean is(PackChoice choice, Mark mark) {
        return choice.course().isPresent() && choice.share() == mark.x() && hours(choice) == mark.y();
    }

    /** The layouts that were run down, those chosen ringed. */
    static Chart of(List<PackChoice> choices, List<PackChoice> chosen, PackWords words, Wording wording) {
        QuantityFormat format = QuantityFormat.forPeople(wording.locale());
        List<PackChoice> run = choices.stream()
                .filter(choice -> choice.course().isPresent() && Double.isFinite(choice.share()))
                .toList();
        double most =
                Math.max(1, run.stream().mapToDouble(PackChoice::share).max().orElse(1));
        double longestH = run.stream().mapToDouble(ChoiceChart::hours).max().orElse(1);
        Axis share =
                Axis.exact(wording.say("choice.plot.share"), 0, ROOM * most, Measure.of(Unit.FRACTION, "%"), format);
        Axis time = new Axis(
                wording.say("choice.plot.lasts"),
                hours -> format.number(hours, Digits.atMostSignificant(3)) + " h",
                hours -> format.print(hours * S_PER_H, Unit.SECOND),
                Axis.Reach.EXACT,
                0,
                ROOM * longestH);
        return Chart.of(share, time)
                .limits(List.of(new Limit(wording.say("choice.plot.limit"), 1, Limit.Way.UPRIGHT)))
                .marks(run.stream()
                        .map(choice -> mark(choice, words).chosen(chosen.contains(choice)))
                        .toList());
    }

    private static double hours(PackChoice choice) {
        return choice.course().orElseThrow().timeS() / S_PER_H;
    }

    private static Mark mark(PackChoice choice, PackWords words) {
        boolean fits = choice.verdict() == Verdict.FITS;
        return Mark.of(
                choice.layout() + " " + words.name(choice),
                fits ? Series.BLUE : Series.GREY,
                choice.share(),
                hours(choice));
    }
}
