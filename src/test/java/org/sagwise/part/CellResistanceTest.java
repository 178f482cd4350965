package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published rows: pulses on a 3.0 Ah NMC 18650, worked out from the open data of the Battery
 * Testing Consortium, Oxford Brookes University, 2021–22.
 */
class CellResistanceTest {

    /**
     * Ten-second pulses at three times the capacity; 28.4 mΩ (3.7 V) and 35.4 mΩ (full) at 25 °C.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 44.0, 28.4", "15, 32.6, 28.4", "25, 28.4, 28.4", "35, 24.2, 28.4", "45, 22.6, 28.4",
        "5, 58.1, 35.4", "15, 42.9, 35.4", "25, 35.4, 35.4", "35, 29.0, 35.4", "45, 25.8, 35.4"
    })
    void temperatureFactor_publishedRow_isMetWithinSixPercent(double temperatureC, double mohm, double mohmAt25) {
        double published = mohm / mohmAt25;

        assertEquals(published, CellResistance.temperatureFactor(temperatureC), 0.06 * published);
    }

    /** The same rows give one Arrhenius term an activation energy of 12.1 kJ/mol over 5–45 °C. */
    @Test
    void temperatureFactor_overThePublishedRange_hasThePublishedActivationEnergy() {
        double ratio = CellResistance.temperatureFactor(5) / CellResistance.temperatureFactor(45);
        double joulesPerMol = 8.314462618 * Math.log(ratio) / (1 / 278.15 - 1 / 318.15);

        assertEquals(12_100, joulesPerMol, 1_500);
    }

    @Test
    void temperatureFactor_cold_growsFasterThanOneTermWould() {
        double oneTerm = Math.exp(12_100 / 8.314462618 * (1 / 253.15 - 1 / 298.15));

        assertTrue(CellResistance.temperatureFactor(-20) > 1.5 * oneTerm);
    }

    /** Two-second pulses at 25 °C: resistance at a rest voltage over the 21.9 mΩ at 3.72 V. */
    @ParameterizedTest
    @CsvSource({
        "4.09, 23.1, 0.06", "4.02, 22.8, 0.06", "3.72, 21.9, 0.001", "3.56, 22.3, 0.02",
        "3.47, 23.2, 0.02", "3.40, 24.9, 0.02", "3.28, 28.5, 0.02", "3.14, 36.9, 0.02"
    })
    void chargeFactor_publishedRow_isMet(double restV, double mohm, double tolerance) {
        double charge = Chemistry.NCR.restCurve().chargeAt(restV);
        double published = mohm / 21.9;

        assertEquals(published, CellResistance.chargeFactor(charge), tolerance * published);
    }

    /** Near empty about twice the middle: ten-second pulses gave 60.6 mΩ against 28.4 mΩ. */
    @Test
    void chargeFactor_empty_isAboutTwo() {
        assertEquals(60.6 / 28.4, CellResistance.chargeFactor(0), 0.15);
        assertEquals(CellResistance.chargeFactor(0), CellResistance.chargeFactor(-0.5));
    }

    /** Doubled resistance and a fifth of the capacity lost come together: teaching value. */
    @Test
    void healthFactor_eightyPercent_isTwo() {
        assertEquals(2, CellResistance.healthFactor(0.8), 1e-12);
        assertEquals(1, CellResistance.healthFactor(1));
    }

    @Test
    void ohmAt_modelAsTheCatalogueGivesIt_isExactlyItsNumber() {
        CellResistance resistance = CellResistance.ofModel(0.020);

        assertEquals(0.020, resistance.ohmAt(25, 1, 1));
        assertEquals(0.020, resistance.ohmAt(25, 0.5, 1));
    }

    @Property
    void ohmAt_measuredCellAsItIs_isExactlyItsNumber(
            @ForAll @DoubleRange(min = -0.2, max = 1.5) @Scale(10) double charge,
            @ForAll @DoubleRange(min = 0.1, max = 1) @Scale(10) double health,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(10) double ohm) {
        assertEquals(ohm, CellResistance.measured(ohm, charge, health).ohmAt(25, charge, health));
    }

    @Property
    void ohmAt_warmer_isLess(
            @ForAll @DoubleRange(min = -39, max = 50) @Scale(10) double temperatureC,
            @ForAll @DoubleRange(min = 0.001, max = 50) @Scale(10) double warmer,
            @ForAll @DoubleRange(min = -0.2, max = 1.2) @Scale(10) double charge) {
        CellResistance resistance = CellResistance.ofModel(0.020);
        double cold = resistance.ohmAt(temperatureC, charge, 1);
        double warm = resistance.ohmAt(temperatureC + warmer, charge, 1);

        assertTrue(warm < cold && warm > 0);
    }

    @Test
    void healthFactor_outsideItsRange_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> CellResistance.healthFactor(0));
        assertThrows(IllegalArgumentException.class, () -> CellResistance.healthFactor(1.1));
        assertThrows(IllegalArgumentException.class, () -> CellResistance.healthFactor(Double.NaN));
    }
}
