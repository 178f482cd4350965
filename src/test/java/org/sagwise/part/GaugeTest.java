package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeTest {

    private static final double M_PER_MIL = 25.4e-6;
    private static final double FT_PER_M = 1 / 0.3048;

    /** ASTM B258 fixes these two; AWG 4/0 is number −3 here. */
    @ParameterizedTest
    @CsvSource({"36, 0.005", "-3, 0.46"})
    void diameterM_anchors_areExact(int number, double inches) {
        assertEquals(inches * 0.0254, new Gauge(number).diameterM(), 1e-12);
    }

    /** Diameters in mils as printed in the wire resistance table at cirris.com (AWG 12 to 30). */
    @ParameterizedTest
    @CsvSource({
        "12, 80.808", "13, 71.901", "14, 64.084", "15, 57.068", "16, 50.820", "17, 45.257",
        "18, 40.303", "19, 35.890", "20, 31.961", "22, 25.347", "23, 22.571", "24, 20.100",
        "25, 17.900", "26, 15.940", "27, 14.195", "28, 12.641", "29, 11.257", "30, 10.025"
    })
    void diameterM_printedTable_agreesWithinATenthOfAPercent(int number, double mils) {
        assertEquals(mils * M_PER_MIL, new Gauge(number).diameterM(), 1e-3 * mils * M_PER_MIL);
    }

    /** Diameters in inches, four decimals, as printed in the wire gauge table at 1728.org. */
    @ParameterizedTest
    @CsvSource({
        "-3, 0.4600", "-2, 0.4096", "-1, 0.3648", "0, 0.3249", "1, 0.2893", "2, 0.2576",
        "3, 0.2294", "4, 0.2043", "5, 0.1819", "6, 0.1620", "7, 0.1443", "8, 0.1285",
        "9, 0.1144", "10, 0.1019", "11, 0.0907"
    })
    void diameterM_thickWire_agreesToTheLastPrintedDigit(int number, double inches) {
        assertEquals(inches, new Gauge(number).diameterM() / 0.0254, 0.6e-4);
    }

    /**
     * Ohms for 1000 ft of copper at 20 °C: HyperPhysics, wire gauge table (Georgia State
     * University), AWG 10 to 32.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 0.9989", "11, 1.26", "12, 1.588", "13, 2.003", "14, 2.525", "15, 3.184", "16, 4.016",
        "17, 5.064", "18, 6.385", "19, 8.051", "20, 10.15", "21, 12.8", "22, 16.14", "23, 20.36",
        "24, 25.67", "25, 32.37", "26, 40.81", "27, 51.47", "28, 64.9", "29, 81.83", "30, 103.2",
        "31, 130.1", "32, 164.1"
    })
    void ohmPerM_printedTable_agreesWithinATenthOfAPercent(int number, double ohmPer1000Ft) {
        double printed = ohmPer1000Ft * FT_PER_M / 1000;

        assertEquals(printed, Copper.ohmPerM(new Gauge(number).size(), 20), 1e-3 * printed);
    }

    /**
     * Three steps halve the area, six halve the diameter, ten take a tenth of the area: Kuphaldt,
     * Lessons in Electric Circuits, vol. I (three steps); rules of thumb at daycounter.com.
     */
    @Property
    void rulesOfThumb_anyGauge_hold(@ForAll @IntRange(min = -3, max = 40) int number) {
        double area = new Gauge(number).size().areaM2();

        assertEquals(2, area / new Gauge(number + 3).size().areaM2(), 0.01);
        assertEquals(10, area / new Gauge(number + 10).size().areaM2(), 0.2);
        assertEquals(2, new Gauge(number).diameterM() / new Gauge(number + 6).diameterM(), 0.01);
    }

    @Property
    void nearest_diameterOfAGauge_isThatGauge(@ForAll @IntRange(min = -3, max = 50) int number) {
        Gauge gauge = new Gauge(number);

        assertEquals(gauge, Gauge.nearest(gauge.diameterM()));
        assertEquals(number, Gauge.numberAt(gauge.diameterM()), 1e-9);
    }

    @Property
    void numberAt_thickerWire_isSmaller(@ForAll @DoubleRange(min = 1e-5, max = 0.02) @Scale(10) double diameterM) {
        assertTrue(Gauge.numberAt(1.1 * diameterM) < Gauge.numberAt(diameterM));
    }

    @ParameterizedTest
    @CsvSource({"18, 18", "1, 1", "0, 1/0", "-1, 2/0", "-3, 4/0"})
    void label_number_isWrittenAsTheTradeDoes(int number, String label) {
        assertEquals(label, new Gauge(number).label());
    }

    @Test
    void gauge_outsideTheTable_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Gauge(-4));
        assertThrows(IllegalArgumentException.class, () -> new Gauge(51));
    }
}
