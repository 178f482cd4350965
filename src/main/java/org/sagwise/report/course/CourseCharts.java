package org.sagwise.report.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.sagwise.part.PartKind;
import org.sagwise.picture.look.Series;
import org.sagwise.picture.plot.Axis;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.Curve;
import org.sagwise.picture.plot.Curve.Weight;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.reading.Bench;
import org.sagwise.run.CellMoment;
import org.sagwise.run.CoilMoment;
import org.sagwise.run.RunState;
import org.sagwise.run.Trace;
import org.sagwise.scenario.Part;

/** Makes charts of what was recorded. */
public final class CourseCharts {

    /** More lines than this in one chart are told apart by nobody. */
    public static final int MOST_PARTS = 7;

    private final Bench bench;
    private final List<List<CellMoment>> cellMoments;
    private final List<List<CoilMoment>> coilMoments;
    private final double[] timeS;
    private final double endS;
    private final ClockTexts texts;

    public CourseCharts(Bench bench, Trace course, ClockTexts texts) {
        this.bench = bench;
        this.texts = texts;
        cellMoments = course.states().stream().map(RunState::cells).toList();
        coilMoments = course.states().stream().map(RunState::coils).toList();
        timeS = course.states().stream().mapToDouble(RunState::timeS).toArray();
        endS = course.endS();
    }

    /** Parts of a bench that have curves, in the order of their lines: cells first. */
    public static List<Part> parts(Bench bench) {
        List<Part> parts = new ArrayList<>(bench.scenario().partsOf(PartKind.CELL));
        parts.addAll(bench.scenario().partsOf(PartKind.COIL));
        return parts.subList(0, Math.min(MOST_PARTS, parts.size()));
    }

    public static Series series(int place) {
        return Series.values()[place % Series.values().length];
    }

    /**
     * The chart of a quantity.
     *
     * @param hidden ids of parts that are left out
     */
    public Chart of(Quantity quantity, Set<String> hidden) {
        List<Curve> curves = new ArrayList<>();
        List<Part> parts = parts(bench);
        for (int place = 0; place < parts.size(); place++) {
            Part part = parts.get(place);
            if (hidden.contains(part.id())) {
                continue;
            }
            if (part.kind() == PartKind.CELL) {
                addCell(quantity, part, place, curves);
            } else {
                addCoil(quantity, part, place, curves);
            }
        }
        QuantityFormat format = QuantityFormat.forPeople(texts.locale());
        Axis values = Axis.around(
                "",
                quantity.leastSpan(),
                value -> quantity.tick(value, format),
                value -> quantity.print(value, format));
        return Chart.of(Axis.time(endS, texts::shortTime), values).curves(curves);
    }

    private void addCell(Quantity quantity, Part cell, int place, List<Curve> curves) {
        int at = bench.scenario().partsOf(PartKind.CELL).indexOf(cell);
        double[] values = cellMoments.stream()
                .mapToDouble(now -> quantity.of(now.get(at)))
                .toArray();
        curves.add(new Curve(cell.name(), series(place), Weight.MAIN, timeS, values));
        if (quantity == Quantity.VOLTS) {
            double[] rest =
                    cellMoments.stream().mapToDouble(now -> now.get(at).restV()).toArray();
            String name = texts.word("curves.rest");
            curves.add(new Curve(name, series(place), Weight.BESIDE, timeS, rest));
        }
    }

    private void addCoil(Quantity quantity, Part coil, int place, List<Curve> curves) {
        int at = bench.scenario().partsOf(PartKind.COIL).indexOf(coil);
        quantity.ofCoil()
                .map(read -> coilMoments.stream()
                        .mapToDouble(now -> read.applyAsDouble(now.get(at)))
                        .toArray())
                .filter(values -> Double.isFinite(values[0]))
                .map(values -> new Curve(coil.name(), series(place), Weight.MAIN, timeS, values))
                .ifPresent(curves::add);
    }
}
