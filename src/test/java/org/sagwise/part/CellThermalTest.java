package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class CellThermalTest {

    private static final CellThermal CELL = CellThermal.of(CellFormat.F18650, Chemistry.INR, Cooling.STILL_AIR);

    /**
     * 45 g at 1040 J/(kg·K) make 46.8 J/K, within 37–55 J/K for the spread of both (specific heat:
     * batterydesign.net; mass: band of the trade).
     */
    @Test
    void heatCapacity_18650_liesInThePublishedBand() {
        assertEquals(46.8, CELL.heatCapacityJPerK(), 1.0);
    }

    /** 46.8 J/K over 10 W/(m²·K) on 4185 mm²: 1118 s, worked out by hand. */
    @Test
    void timeConstant_18650_isAboutNineteenMinutes() {
        assertEquals(1118, CELL.timeConstantS(), 0.02 * 1118);
    }

    /**
     * OpenStax, University Physics Volume 2, ch. 10, problem 25: a battery of 20.0 kg with 0.300
     * kcal/(kg·°C) that takes 40.0 W warms by 0.0956 °C a minute.
     */
    @Test
    void after_batteryBeingCharged_warmsAsPrinted() {
        CellThermal battery = new CellThermal(20.0, 0.300 * 4186, 1, 1e-9);

        assertEquals(0.0956, battery.after(20, 40.0, 20, 60) - 20, 0.0001);
    }

    @Property
    void after_twoHalves_isTheWhole(
            @ForAll @DoubleRange(min = -20, max = 100) @Scale(10) double startC,
            @ForAll @DoubleRange(min = 0, max = 20) @Scale(10) double heatW,
            @ForAll @DoubleRange(min = 0, max = 3600) @Scale(10) double durationS) {
        double whole = CELL.after(startC, heatW, 20, durationS);
        double half = CELL.after(startC, heatW, 20, durationS / 2);

        assertEquals(whole, CELL.after(half, heatW, 20, durationS / 2), 1e-9);
    }

    @Property
    void polarisation_twoHalves_isTheWhole(
            @ForAll @DoubleRange(min = -1, max = 1) @Scale(10) double volts,
            @ForAll @DoubleRange(min = -30, max = 30) @Scale(10) double currentA,
            @ForAll @DoubleRange(min = 0, max = 300) @Scale(10) double durationS) {
        CellPolarisation polarisation = new CellPolarisation(0.010, CellPolarisation.QUICK_S);
        double half = polarisation.after(volts, currentA, durationS / 2);

        assertEquals(
                polarisation.after(volts, currentA, durationS),
                polarisation.after(half, currentA, durationS / 2),
                1e-12);
    }
}
