package org.sagwise.report.vary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Signal;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.look.Series;
import org.sagwise.picture.plot.Axis;
import org.sagwise.picture.plot.Band;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.Curve;
import org.sagwise.picture.plot.Field;
import org.sagwise.picture.plot.Limit;
import org.sagwise.plan.vary.BuildSpread.Percentiles;
import org.sagwise.plan.vary.CautionSpan;
import org.sagwise.plan.vary.Range;
import org.sagwise.plan.vary.Variable;
import org.sagwise.plan.vary.VariedCurve;
import org.sagwise.plan.vary.VariedField;
import org.sagwise.quantity.Measure;
import org.sagwise.reading.NamedReading;

/** Charts of what varying a bench shows; along the axes values are in units of SI. */
public final class VaryCharts {

    /** More turns than this crowd a chart; the words tell them all. */
    private static final int MOST_TURNS = 6;

    /** A limit further above the curve than this would press it flat, and is told in words alone. */
    private static final double FAR = 2.5;

    private final VaryWords words;

    public VaryCharts(VaryWords words) {
        this.words = words;
    }

    /** A reading over a value, with where cautions begin and end. */
    public Chart of(VariedCurve curve) {
        Variable variable = curve.variable();
        List<VariedCurve.Point> points = curve.points();
        double[] x =
                points.stream().mapToDouble(point -> variable.si(point.at())).toArray();
        double[] y = points.stream().mapToDouble(VariedCurve.Point::reading).toArray();
        if (points.size() < 2) {
            return Chart.EMPTY;
        }
        Range range =
                new Range(points.get(0).at(), points.get(points.size() - 1).at());
        String name = words.name(curve.reading());
        return Chart.of(axis(variable, range), axis(curve.reading(), name))
                .curves(List.of(new Curve(name, Series.BLUE, Curve.Weight.MAIN, x, y)))
                .limits(limits(curve));
    }

    /** The same with bands of builds at some places of its value, as the file writes them. */
    public Chart banded(VariedCurve curve, double[] places, List<Percentiles> along) {
        int count = along.size();
        double[] x = new double[count];
        double[] low = new double[count];
        double[] high = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = curve.variable().si(places[i]);
            low[i] = along.get(i).low();
            high[i] = along.get(i).high();
        }
        return of(curve)
                .bands(List.of(new Band(words.word("band"), Series.BLUE, x, low, high)))
                .named();
    }

    /** A reading over two values. */
    public Chart of(VariedField field) {
        String name = words.name(field.reading());
        Axis across = axis(field.x(), new Range(field.xs()[0], field.xs()[field.xs().length - 1]));
        Axis up = axis(field.y(), new Range(field.ys()[0], field.ys()[field.ys().length - 1]));
        return Chart.of(across, up)
                .field(new Field(
                        axis(field.reading(), name),
                        si(field.x(), field.xs()),
                        si(field.y(), field.ys()),
                        field.values()));
    }

    private static double[] si(Variable variable, double[] written) {
        double[] si = new double[written.length];
        for (int i = 0; i < si.length; i++) {
            si[i] = variable.si(written[i]);
        }
        return si;
    }

    /** Where the bench stands on a curve: its value, and no height of its own. */
    public static Optional<Point> now(VariedCurve curve) {
        return curve.now().stream()
                .mapToObj(now -> new Point(curve.variable().si(now), Double.NaN))
                .findFirst();
    }

    private Axis axis(Variable variable, Range range) {
        return Axis.exact(
                words.name(variable),
                variable.si(range.from()),
                variable.si(range.to()),
                variable.measure(),
                words.format());
    }

    private Axis axis(NamedReading reading, String name) {
        Measure measure =
                reading.quantity().endsWith("fraction") || reading.quantity().equals("efficiency")
                        ? Measure.of(reading.unit(), "%")
                        : Measure.of(reading.unit());
        return Axis.around(name, 1e-9, measure, words.format());
    }

    /** The limit, and the gravest cautions where they begin or end. */
    private List<Limit> limits(VariedCurve curve) {
        List<Limit> limits = new ArrayList<>();
        double most = curve.points().stream()
                .mapToDouble(VariedCurve.Point::reading)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        curve.limit().stream()
                .filter(limit -> limit < FAR * most)
                .forEach(limit -> limits.add(new Limit(
                        words.word("limit.short", words.print(curve.reading(), limit)), limit, Limit.Way.LEVEL)));
        for (CautionSpan span : curve.cautions()) {
            String title = CautionTexts.title(span.caution(), words.format().locale());
            if (span.caution().signal() == Signal.NOTICE || limits.size() >= MOST_TURNS) {
                continue;
            }
            if (span.beginsWithin()) {
                limits.add(new Limit("› " + title, curve.variable().si(span.from()), Limit.Way.UPRIGHT));
            }
            if (span.endsWithin()) {
                limits.add(new Limit("‹ " + title, curve.variable().si(span.to()), Limit.Way.UPRIGHT));
            }
        }
        return limits;
    }
}
