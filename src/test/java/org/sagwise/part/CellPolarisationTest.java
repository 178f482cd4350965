package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Slow sag against printed transients of a resistor and a capacitor. A source behind a resistance
 * that charges a capacitor is, seen from the capacitor, a current into the resistance with the
 * capacitor beside it: the pair that the slow sag is.
 */
class CellPolarisationTest {

    /** T. R. Kuphaldt, Lessons in Electric Circuits, Vol. I: 15 V, 10 kΩ, 100 µF. */
    @ParameterizedTest
    @CsvSource({"0.5, 5.902", "1, 9.482", "2, 12.970", "3, 14.253", "4, 14.725", "5, 14.899", "6, 14.963", "10, 14.999"
    })
    void after_chargingFromEmpty_isAsPrinted(double seconds, double volts) {
        CellPolarisation pair = new CellPolarisation(10_000, 10_000 * 100e-6);

        assertEquals(volts, pair.after(0, 15.0 / 10_000, seconds), 0.0011);
    }

    /** OpenStax, University Physics Volume 2, Example 10.8: 101 Ω, 50 mF, 100 V, lamp at 80 V. */
    @Test
    void after_relaxationOscillator_reachesTheLampsVoltageInTime() {
        CellPolarisation pair = new CellPolarisation(101, 101 * 50e-3);

        assertEquals(5.05, pair.timeConstantS(), 1e-12);
        assertEquals(80, pair.after(0, 100.0 / 101, 8.13), 0.02);
    }

    /** OpenStax, University Physics Volume 2, Example 10.9: 12 V, 10 mF, 10 V within 10 s. */
    @ParameterizedTest
    @CsvSource({"558.11, 10.00", "10000, 179.18"})
    void after_windscreenWiper_reachesTenVoltsInTime(double ohm, double seconds) {
        CellPolarisation pair = new CellPolarisation(ohm, ohm * 10e-3);

        assertEquals(10.00, pair.after(0, 12 / ohm, seconds), 0.001);
    }

    /** OpenStax, College Physics 2e, Example 21.7: 8 µF, 1 kΩ, 10 kV, 24 ms; exact is 497.9 V. */
    @Test
    void after_defibrillator_decaysAsPrinted() {
        CellPolarisation pair = new CellPolarisation(1000, 8e-3);

        assertEquals(497.9, pair.after(10_000, 0, 24e-3), 0.05);
    }

    @Test
    void mean_ofARise_isItsAreaOverItsTime() {
        CellPolarisation pair = new CellPolarisation(0.01, 10);
        double sum = 0;
        for (int i = 0; i < 10_000; i++) {
            sum += pair.after(0.02, 5, 7 * (i + 0.5) / 10_000);
        }

        assertEquals(sum / 10_000, pair.mean(0.02, 5, 7), 1e-9);
    }
}
