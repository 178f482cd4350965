package org.sagwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.sagwise.picture.plot.Band;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.Curve;
import org.sagwise.picture.plot.Field;
import org.sagwise.picture.plot.Mark;

/**
 * What a plot shows as comma-separated values (RFC 4180), for a spreadsheet: full double precision
 * in units of SI, a point as the decimal mark; a number that there is not is left empty. A field is
 * a row for each of its places, points are rows with their labels, lines and bands share the places
 * of them all.
 */
public final class PlotCsv {

    private static final String LINE_END = "\r\n";

    private PlotCsv() {}

    /** The whole table, its heads first. */
    public static String of(Chart chart) {
        List<List<String>> rows = new ArrayList<>();
        if (chart.field().isPresent()) {
            field(chart, chart.field().get(), rows);
        } else if (!chart.marks().isEmpty() && chart.curves().isEmpty()) {
            rows.add(List.of("", chart.x().title(), chart.y().title()));
            for (Mark mark : chart.marks()) {
                rows.add(List.of(mark.label(), number(mark.x()), number(mark.y())));
            }
        } else {
            lines(chart, rows);
        }
        return rows.stream()
                .map(row -> row.stream().map(PlotCsv::cell).collect(Collectors.joining(",", "", LINE_END)))
                .collect(Collectors.joining());
    }

    private static void lines(Chart chart, List<List<String>> rows) {
        List<Curve> columns = new ArrayList<>(chart.curves());
        List<String> heads = new ArrayList<>(List.of(chart.x().title()));
        chart.curves()
                .forEach(curve -> heads.add(curve.name().isEmpty() ? chart.y().title() : curve.name()));
        for (Band band : chart.bands()) {
            columns.addAll(List.of(band.lower(), band.upper()));
            heads.addAll(List.of(band.name() + " ↓", band.name() + " ↑"));
        }
        rows.add(heads);
        for (double x : chart.places()) {
            List<String> row = new ArrayList<>(List.of(number(x)));
            columns.forEach(curve -> row.add(number(curve.at(x))));
            rows.add(row);
        }
    }

    private static void field(Chart chart, Field field, List<List<String>> rows) {
        rows.add(List.of(chart.x().title(), chart.y().title(), field.of().title()));
        for (int row = 0; row < field.y().length; row++) {
            int at = row;
            IntStream.range(0, field.x().length)
                    .forEach(column -> rows.add(List.of(
                            number(field.x()[column]), number(field.y()[at]), number(field.values()[at][column]))));
        }
    }

    private static String number(double value) {
        return Double.isFinite(value) ? Double.toString(value + 0.0) : "";
    }

    private static String cell(String text) {
        boolean isPlain = text.chars().noneMatch(it -> it == ',' || it == '"' || it == '\n' || it == '\r');
        return isPlain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
