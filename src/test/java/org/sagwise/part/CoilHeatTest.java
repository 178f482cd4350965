package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.file.CatalogueLoader;

/** Temperatures of dry coils and wires in still air, against what is published. */
class CoilHeatTest {

    private static final double AIR_C = 20;

    private static Alloy alloy(String id) {
        return CatalogueLoader.builtIn().alloys().find(id).orElseThrow();
    }

    private static CoilWire wire(String alloy, int gauge) {
        return CoilWire.single(alloy(alloy), new Gauge(gauge).size());
    }

    /** A metre of straight wire: legs, and next to no wrap. */
    private static CoilWinding straight(CoilWire wire) {
        return new CoilWinding(wire, 1e-6, 3e-3, 1);
    }

    /** Current (A) that holds a winding at this temperature (°C). */
    static double ampereFor(CoilWinding winding, double temperatureC) {
        return Math.sqrt(winding.thermal().lossW(temperatureC, AIR_C) / winding.ohmAt(temperatureC));
    }

    /**
     * Straight NiCr 80/20, AWG 26, in still air: current-temperature table of a resistance-wire
     * maker (Alloy 650, pelicanwire.com). Before, 4.65 A came out at 951 °C instead of 800.
     */
    @ParameterizedTest
    @CsvSource({"200, 1.61, 0.10", "500, 2.90, 0.05", "800, 4.65, 0.05", "1000, 6.10, 0.05"})
    void thermal_straightWire_takesTheCurrentOfTheMakersTable(double temperatureC, double ampere, double share) {
        assertEquals(ampere, ampereFor(straight(wire("nicr-80-20", 26)), temperatureC), share * ampere);
    }

    /** A close coil needs 30 to 60 % less current than straight wire (wiretron.com, notes on coiled wire). */
    @ParameterizedTest
    @CsvSource({"26, 8, 3", "24, 8, 3", "28, 12, 2.5", "26, 20, 3"})
    void thermal_closeCoil_needsLessCurrentThanStraightWire(int gauge, double wraps, double innerMm) {
        CoilWire wire = wire("nicr-80-20", gauge);
        double coiled = ampereFor(new CoilWinding(wire, wraps, innerMm * 1e-3, 0), 600);
        double less = 1 - coiled / ampereFor(straight(wire), 600);

        assertTrue(less > 0.30 && less < 0.60, "less by " + less);
    }

    /**
     * FeCrAl 25-5, AWG 26, 8 wraps on 3 mm, legs of 10 mm: the outline of the coil with its legs is
     * 74 mm², reckoned by hand (cylinder of 3.81 × 3.24 mm with both ends, and 10 mm of wire).
     */
    @Test
    void thermal_theCoilOfTheDemo_radiatesLessThanItsOutline() {
        CoilWinding coil = new CoilWinding(wire("fecral-25-5", 26), 8, 3e-3, 10e-3);
        double legsM2 = Math.PI * coil.wire().diameterM() * 10e-3;

        assertEquals(74.3e-6, coil.outlineM2() + legsM2, 0.3e-6);
        assertTrue(coil.thermal().blackM2() < 74.3e-6);
    }

    @Property
    void thermal_anyCoil_radiatesNoMoreThanABlackBodyOfItsShape(
            @ForAll @DoubleRange(min = 0.1, max = 60) @Scale(6) double wraps,
            @ForAll @DoubleRange(min = 0.5, max = 10) @Scale(6) double innerMm,
            @ForAll @DoubleRange(min = 0, max = 50) @Scale(6) double legsMm,
            @ForAll @IntRange(min = 18, max = 36) int gauge) {
        CoilWinding coil = new CoilWinding(wire("fecral-25-5", gauge), wraps, innerMm * 1e-3, legsMm * 1e-3);
        double legsM2 = Math.PI * coil.wire().diameterM() * legsMm * 1e-3;
        double black = coil.thermal().blackM2();

        assertTrue(black <= coil.outlineM2() + legsM2);
        assertTrue(black <= coil.surfaceM2() && black >= 0.5 * (coil.outlineM2() + legsM2));
    }

    /** Incropera, DeWitt, table A.4: air at 700 K has 52.4 mW/(m·K) and 68.1 mm²/s, Pr 0.695. */
    @Test
    void heatTransfer_thinWireInHotAir_followsMorganWithTabulatedAir() {
        double filmK = 700;
        double warmerK = 2 * (filmK - 293.15);
        double rayleigh = 9.81 / filmK * warmerK * Math.pow(0.4e-3, 3) * 0.695 / Math.pow(68.1e-6, 2);
        double byTable = 1.02 * Math.pow(rayleigh, 0.148) * 52.4e-3 / 0.4e-3;

        assertEquals(byTable, StillAir.heatTransferWPerM2K(0.4e-3, 20 + warmerK, 20), 0.03 * byTable);
    }

    /** 304L, Int. J. Thermophys., doi 10.1007/BF00506274: 75.59 + 0.04695·T − 9.592e-6·T² µΩ·cm. */
    @ParameterizedTest
    @CsvSource({"1127, 122.5", "1200, 123.9"})
    void factor_hotSteel_isThePublishedResistivity(double temperatureC, double microOhmCm) {
        double kelvin = temperatureC + 273.15;

        assertEquals(75.59 + 0.04695 * kelvin - 9.592e-6 * kelvin * kelvin, microOhmCm, 0.06);
        assertEquals(microOhmCm, alloy("steel-316l").resistivityOhmM(temperatureC) * 1e8, 0.05);
        assertEquals(microOhmCm, alloy("steel-304").resistivityOhmM(temperatureC) * 1e8, 0.6);
    }
}
