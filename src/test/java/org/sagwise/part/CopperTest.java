package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class CopperTest {

    /** IEC 60028: 1/58 = 0.017241 Ω·mm²/m. */
    @Test
    void resistivity_annealedCopper_isTheStandards() {
        assertEquals(0.017241e-6, Copper.RESISTIVITY_OHM_M, 0.5e-12);
    }

    /**
     * Kuphaldt, Lessons in Electric Circuits, vol. I, temperature coefficient of resistance: 14 V,
     * a load of 250 Ω between two wires of 15 Ω at 20 °C. At 35 °C, with the book's coefficient of
     * 0.004041, the load has 12.42 V and each wire 0.79 V.
     */
    @Test
    void temperatureFactor_textbookCircuit_givesThePrintedVoltages() {
        double wireOhm = 15 * Copper.temperatureFactor(35, 0.004041);
        double currentA = 14 / (250 + 2 * wireOhm);

        assertEquals(12.42, currentA * 250, 0.005);
        assertEquals(0.79, currentA * wireOhm, 0.005);
    }

    /** The same circuit with the standard's coefficient differs by less than a printed digit. */
    @Test
    void temperatureFactor_standardsCoefficient_givesThePrintedVoltagesToo() {
        double wireOhm = 15 * Copper.temperatureFactor(35);

        assertEquals(12.42, 14 / (250 + 2 * wireOhm) * 250, 0.01);
    }

    /**
     * Kuphaldt, Lessons in Electric Circuits, vol. I, specific resistance: 2300 ft of AWG 14 at
     * 10.09 Ω·cmil/ft have 5.651 Ω. The book's copper is purer than the standard's, 1.678 against
     * 1.7241 µΩ·cm.
     */
    @Test
    void ohmAt_textbookRun_agreesForTheBooksCopper() {
        JumperWire run = new JumperWire(new Gauge(14).size(), 2300 * 0.3048);

        assertEquals(5.651, run.ohmAt(20) * 1.678 / 1.7241, 0.005);
    }

    /** OpenStax, University Physics Volume 2, table 9.1: ρ = 1.68·10⁻⁸ Ω·m, α = 0.0039 /K. */
    @Test
    void constants_textbookTable_areWithinThreePercent() {
        assertEquals(1.68e-8, Copper.RESISTIVITY_OHM_M, 0.03 * 1.68e-8);
        assertEquals(0.0039, Copper.PER_KELVIN, 0.01 * 0.0039);
    }

    @Property
    void ohmAt_anyWire_growsWithLengthAndThinness(
            @ForAll @IntRange(min = 0, max = 40) int number,
            @ForAll @DoubleRange(min = 0.001, max = 10) @Scale(10) double lengthM,
            @ForAll @DoubleRange(min = -40, max = 300) @Scale(10) double temperatureC) {
        WireSize size = new Gauge(number).size();
        double ohm = new JumperWire(size, lengthM).ohmAt(temperatureC);

        assertTrue(ohm > 0);
        assertEquals(2 * ohm, new JumperWire(size, 2 * lengthM).ohmAt(temperatureC), 1e-12 + ohm * 1e-12);
        assertTrue(new JumperWire(new Gauge(number + 1).size(), lengthM).ohmAt(temperatureC) > ohm);
    }

    @Property
    void wireSize_diameterAndArea_areTheSameWire(
            @ForAll @DoubleRange(min = 0.01, max = 20) @Scale(10) double diameterMm) {
        WireSize size = WireSize.ofDiameterMm(diameterMm);

        assertEquals(diameterMm, size.diameterMm(), 1e-12 * diameterMm);
        assertEquals(diameterMm, WireSize.ofAreaMm2(size.areaMm2()).diameterMm(), 1e-12 * diameterMm);
    }
}
