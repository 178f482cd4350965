package org.sagwise.report.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.look.Series;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.plot.Axis;
import org.sagwise.picture.plot.Band;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.Curve;
import org.sagwise.picture.plot.Field;
import org.sagwise.picture.plot.Limit;
import org.sagwise.picture.plot.Mark;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.report.PlotCsv;

/** A plot as a picture and as a table. */
class PlotPictureTest {

    private static final QuantityFormat FORMAT = QuantityFormat.forPeople(Locale.ENGLISH);
    private static final Axis OHMS = Axis.exact("Coil", 0.2, 1, Measure.of(Unit.OHM), FORMAT);
    private static final Axis WATTS = Axis.around("Heat", 0.1, Measure.of(Unit.WATT), FORMAT);
    private static final double[] X = {0.2, 0.5, 1};

    private static Chart lines() {
        return Chart.of(OHMS, WATTS)
                .curves(List.of(new Curve("Watts", Series.BLUE, Curve.Weight.MAIN, X, new double[] {80, 32, 16})))
                .bands(List.of(new Band(
                        "5 to 95 %", Series.BLUE, X, new double[] {70, 30, 15}, new double[] {90, Double.NaN, 17})))
                .limits(List.of(
                        new Limit("limit", 75, Limit.Way.LEVEL), new Limit("overloaded", 0.25, Limit.Way.UPRIGHT)))
                .named();
    }

    private static Chart field() {
        return Chart.of(OHMS, WATTS).field(new Field(WATTS, X, new double[] {1, 2}, new double[][] {
            {1, 2, 3}, {3, 4, Double.NaN}
        }));
    }

    private static String svg(Chart chart) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PlotPicture("A title", chart, Optional.of(new Point(0.5, Double.NaN)))
                .write(PictureFormat.SVG, Locale.ENGLISH, Theme.LIGHT, PictureSize.FORUM, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void picture_ofEveryKindOfThing_isDrawnWithItsColours() throws IOException {
        String lines = svg(lines());
        Mark half = new Mark("half", Series.VERMILION, 0.4, 20, 0.5, true);
        String marks = svg(Chart.of(OHMS, WATTS).marks(List.of(half)));

        assertTrue(lines.contains(Series.BLUE.colour().hex()), "line and band");
        assertTrue(marks.contains(Series.VERMILION.colour().hex()), "a dot");
        assertFalse(lines.equals(svg(lines().limits(List.of()))), "limits");
        assertTrue(svg(field()).length() > 2 * lines.length() / 3, "a field");
    }

    @Test
    void table_ofLinesAndBands_sharesTheirPlaces() {
        assertEquals(
                "Coil,Watts,5 to 95 % ↓,5 to 95 % ↑\r\n0.2,80.0,70.0,90.0\r\n0.5,32.0,30.0,\r\n1.0,16.0,15.0,17.0\r\n",
                PlotCsv.of(lines()));
    }

    @Test
    void table_ofAFieldAndOfPoints_isARowForEach() {
        assertTrue(PlotCsv.of(field()).endsWith("0.5,2.0,4.0\r\n1.0,2.0,\r\n"), PlotCsv.of(field()));
        assertEquals(
                ",Coil,Heat\r\n\"2 in a row, \"\"long\"\"\",0.5,30.0\r\n",
                PlotCsv.of(
                        Chart.of(OHMS, WATTS).marks(List.of(Mark.of("2 in a row, \"long\"", Series.BLUE, 0.5, 30)))));
    }
}
