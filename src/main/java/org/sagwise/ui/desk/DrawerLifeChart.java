package org.sagwise.ui.desk;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.sagwise.picture.look.Series;
import org.sagwise.picture.plot.Axis;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.Curve;
import org.sagwise.picture.plot.Limit;
import org.sagwise.picture.plot.Mark;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.plan.pairing.Fitness;

/** A cell's life as curves over the days on which it was measured. */
final class DrawerLifeChart {

    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("yyyy-MM");
    private static final double MILLI = 1e-3;

    private final OwnCell cell;
    private final DrawerWords words;

    DrawerLifeChart(OwnCell cell, DrawerWords words) {
        this.cell = cell;
        this.words = words;
    }

    /** Capacity, with the share of the rated one below which it counts as worn. */
    Chart capacity() {
        OptionalDouble rated = cell.ratedAh(words.catalogue());
        List<Limit> limits = rated.isPresent()
                ? List.of(new Limit(
                        words.say("window.worn-line"),
                        rated.getAsDouble() * Fitness.WORN_SHARE / MILLI,
                        Limit.Way.LEVEL))
                : List.of();
        return chart(
                        words.say("window.chart.capacity"),
                        100,
                        CellMeasurement::capacityAh,
                        Series.BLUE,
                        value -> words.capacity(OptionalDouble.of(value * MILLI)))
                .limits(limits);
    }

    /** Internal resistance. */
    Chart resistance() {
        return chart(
                words.say("window.chart.resistance"),
                4,
                CellMeasurement::resistanceOhm,
                Series.VERMILION,
                value -> words.resistance(OptionalDouble.of(value * MILLI)));
    }

    private Chart chart(
            String title,
            double span,
            Function<CellMeasurement, OptionalDouble> quantity,
            Series series,
            DoubleFunction<String> told) {
        List<CellMeasurement> measured = cell.measurements().stream()
                .filter(it -> quantity.apply(it).isPresent())
                .toList();
        double[] days =
                measured.stream().mapToDouble(it -> it.on().toEpochDay()).toArray();
        double[] values = measured.stream()
                .mapToDouble(it -> quantity.apply(it).getAsDouble() / MILLI)
                .toArray();
        double first = days.length == 0 ? 0 : days[0];
        double last = days.length == 0 ? 1 : days[days.length - 1];
        double margin = Math.max(15, (last - first) * 0.06);
        Axis x = new Axis(
                "",
                day -> date(day).format(MONTH),
                day -> date(day).toString(),
                Axis.Reach.EXACT,
                first - margin,
                last + margin);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < days.length; i++) {
            marks.add(Mark.of("", series, days[i], values[i]));
        }
        return Chart.of(x, Axis.around(title, span, told, told))
                .curves(List.of(new Curve(title, series, Curve.Weight.MAIN, days, values)))
                .marks(marks);
    }

    static LocalDate date(double day) {
        return LocalDate.ofEpochDay(Math.round(day));
    }
}
