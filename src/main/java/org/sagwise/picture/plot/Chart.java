package org.sagwise.picture.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.sagwise.picture.geometry.Point;

/**
 * What a plot shows, without how it looks: the same for window, pictures and the live page.
 *
 * @param x the level axis
 * @param y the upright axis
 * @param curves lines, those in front first
 * @param bands what lies behind the lines
 * @param limits values that matter
 * @param marks single points
 * @param field a quantity over both axes, if it is one
 * @param isNamed whether the names of curves and bands stand above them
 */
public record Chart(
        Axis x,
        Axis y,
        List<Curve> curves,
        List<Band> bands,
        List<Limit> limits,
        List<Mark> marks,
        Optional<Field> field,
        boolean isNamed) {

    /** Without anything in it. */
    public static final Chart EMPTY = of(Axis.time(0, value -> ""), Axis.around("", 1, value -> "", value -> ""));

    public Chart {
        curves = List.copyOf(curves);
        bands = List.copyOf(bands);
        limits = List.copyOf(limits);
        marks = List.copyOf(marks);
    }

    /** Axes with nothing between them yet. */
    public static Chart of(Axis x, Axis y) {
        return new Chart(x, y, List.of(), List.of(), List.of(), List.of(), Optional.empty(), false);
    }

    /** The same with these lines. */
    public Chart curves(List<Curve> others) {
        return new Chart(x, y, others, bands, limits, marks, field, isNamed);
    }

    /** The same with these bands. */
    public Chart bands(List<Band> others) {
        return new Chart(x, y, curves, others, limits, marks, field, isNamed);
    }

    /** The same with these values marked. */
    public Chart limits(List<Limit> others) {
        return new Chart(x, y, curves, bands, others, marks, field, isNamed);
    }

    /** The same with these points. */
    public Chart marks(List<Mark> others) {
        return new Chart(x, y, curves, bands, limits, others, field, isNamed);
    }

    /** The same over a field. */
    public Chart field(Field other) {
        return new Chart(x, y, curves, bands, limits, marks, Optional.of(other), isNamed);
    }

    /** The same with the names of curves and bands above them. */
    public Chart named() {
        return new Chart(x, y, curves, bands, limits, marks, field, true);
    }

    /**
     * A value that is read off.
     *
     * @param curve of which line
     * @param text the value with its unit
     */
    public record Told(Curve curve, String text) {}

    /** What its lines say at a place of the level axis, in order. */
    public List<Told> told(double at) {
        return curves.stream()
                .map(curve -> new Told(curve, y.value().apply(curve.at(at))))
                .toList();
    }

    /** All places of the level axis at which something is drawn, rising. */
    public double[] places() {
        TreeSet<Double> places = new TreeSet<>();
        Stream.of(
                        curves.stream().flatMapToDouble(it -> DoubleStream.of(it.x())),
                        bands.stream().flatMapToDouble(it -> DoubleStream.of(it.x())),
                        marks.stream().mapToDouble(Mark::x),
                        field.stream().flatMapToDouble(it -> DoubleStream.of(it.x())))
                .forEach(some -> some.filter(Double::isFinite).forEach(places::add));
        return places.stream().mapToDouble(it -> it).toArray();
    }

    /** The mark nearest to a point, both ways counted in shares of what is drawn. */
    public Optional<Mark> nearest(Point point) {
        PlotScale across = xScale(5);
        PlotScale up = yScale(5);
        ToDoubleFunction<Mark> distance = mark ->
                Math.hypot(across.share(mark.x()) - across.share(point.x()), up.share(mark.y()) - up.share(point.y()));
        return marks.stream()
                .filter(mark -> Double.isFinite(mark.x() + mark.y()))
                .min((one, other) -> Double.compare(distance.applyAsDouble(one), distance.applyAsDouble(other)));
    }

    /** Where a point stands that says only its place on the level axis: on the first main line. */
    public Point standing(Point point) {
        OptionalDouble height = curves.stream()
                .filter(curve -> curve.weight() == Curve.Weight.MAIN)
                .mapToDouble(curve -> curve.at(point.x()))
                .findFirst();
        return Double.isNaN(point.y()) && height.isPresent() ? new Point(point.x(), height.getAsDouble()) : point;
    }

    PlotScale xScale(int ticks) {
        List<Double> all = new ArrayList<>();
        if (x.reach() == Axis.Reach.AROUND) {
            DoubleStream.of(places()).forEach(all::add);
        }
        return scale(x, all, Limit.Way.UPRIGHT, ticks);
    }

    PlotScale yScale(int ticks) {
        List<Double> all = new ArrayList<>();
        curves.forEach(it -> all.addAll(List.of(it.least(), it.most())));
        bands.forEach(it -> all.addAll(List.of(it.lower().least(), it.upper().most())));
        marks.forEach(it -> all.add(it.y()));
        field.ifPresent(it -> DoubleStream.of(it.y()).forEach(all::add));
        return scale(y, all, Limit.Way.LEVEL, ticks);
    }

    private PlotScale scale(Axis axis, List<Double> drawn, Limit.Way way, int ticks) {
        limits.stream().filter(it -> it.way() == way).forEach(it -> drawn.add(it.at()));
        double low = drawn.stream()
                .mapToDouble(it -> it)
                .filter(Double::isFinite)
                .min()
                .orElse(Double.NaN);
        double high = drawn.stream()
                .mapToDouble(it -> it)
                .filter(Double::isFinite)
                .max()
                .orElse(Double.NaN);
        return axis.scale(low, high, ticks);
    }
}
