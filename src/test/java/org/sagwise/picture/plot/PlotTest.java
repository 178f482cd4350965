package org.sagwise.picture.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.sagwise.picture.look.Series;

/** Reading curves off, thinning them, and where axes are marked. */
class PlotTest {

    private static Curve curve(double[] timeS, double... values) {
        return new Curve("A", Series.BLUE, Curve.Weight.MAIN, timeS, values);
    }

    @Test
    void at_betweenTwoMoments_liesOnTheLine() {
        Curve curve = curve(new double[] {0, 10}, 4, 3);

        assertEquals(3.7, curve.at(3), 1e-12);
        assertEquals(4, curve.at(0));
        assertEquals(3, curve.at(10));
        assertTrue(Double.isNaN(curve.at(10.1)));
    }

    @Test
    void at_whereItJumps_isTheLaterValue() {
        Curve curve = curve(new double[] {0, 5, 5, 10}, 4, 4, 3, 3);

        assertEquals(3, curve.at(5));
        assertEquals(4, curve.at(4.999));
    }

    @Property
    void thinning_ofAnyCurve_losesNoPeakAndKeepsOrder(
            @ForAll @Size(min = 1, max = 2000) List<@DoubleRange(min = -5, max = 5) Double> values,
            @ForAll @IntRange(min = 1, max = 300) int columns) {
        double[] timeS =
                IntStream.range(0, values.size()).mapToDouble(i -> i * 0.7).toArray();
        Curve curve = curve(timeS, values.stream().mapToDouble(v -> v).toArray());

        List<Thinning.Point> points = Thinning.of(curve, columns);

        assertTrue(points.size() <= 4 * columns);
        assertEquals(
                curve.most(),
                points.stream().mapToDouble(Thinning.Point::value).max().orElse(0));
        assertEquals(
                curve.least(),
                points.stream().mapToDouble(Thinning.Point::value).min().orElse(0));
        for (int i = 1; i < points.size(); i++) {
            assertTrue(points.get(i).x() > points.get(i - 1).x());
        }
        assertEquals(timeS[timeS.length - 1], points.get(points.size() - 1).x());
    }

    @Test
    void timeScale_ofAnHour_isMarkedEveryQuarter() {
        assertEquals(
                List.of(0.0, 900.0, 1800.0, 2700.0, 3600.0),
                PlotScale.ofTime(3600, 5).ticks());
    }

    @Test
    void valueScale_ofNoise_spansAtLeastWhatWasAskedFor() {
        PlotScale scale = PlotScale.ofValues(25, 25.0001, 1, 5);

        assertTrue(scale.to() - scale.from() >= 1);
        assertTrue(scale.share(25) > 0 && scale.share(25.0001) < 1);
        assertTrue(scale.ticks().size() >= 2 && scale.ticks().size() <= 6, "" + scale.ticks());
    }
}
