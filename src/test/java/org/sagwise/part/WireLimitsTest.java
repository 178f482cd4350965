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

class WireLimitsTest {

    /**
     * AWG 10–20: free air, 60 °C, Kuphaldt, Lessons in Electric Circuits, vol. I; below: chassis
     * wiring, HyperPhysics wire gauge table.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 40",
        "12, 30",
        "14, 25",
        "16, 18",
        "18, 13",
        "20, 9",
        "22, 7",
        "24, 3.5",
        "26, 2.2",
        "28, 1.4",
        "30, 0.86",
        "32, 0.53"
    })
    void steadyCurrentA_tabulatedGauge_isTheTables(int number, double amps) {
        assertEquals(amps, WireLimits.steadyCurrentA(new Gauge(number).size()), 1e-9);
    }

    /**
     * Between the tabulated gauges the guide stays below the chassis-wiring column (HyperPhysics).
     */
    @ParameterizedTest
    @CsvSource({"11, 47", "13, 35", "15, 28", "17, 19", "19, 14", "21, 9"})
    void steadyCurrentA_oddGauge_liesBetweenNeighboursAndBelowChassisWiring(int number, double chassisA) {
        double amps = WireLimits.steadyCurrentA(new Gauge(number).size());

        assertTrue(amps < WireLimits.steadyCurrentA(new Gauge(number - 1).size()));
        assertTrue(amps > WireLimits.steadyCurrentA(new Gauge(number + 1).size()));
        assertTrue(amps <= chassisA);
    }

    @Property
    void steadyCurrentA_thickerWire_carriesMore(
            @ForAll @DoubleRange(min = 0.005, max = 100) @Scale(10) double areaMm2) {
        double amps = WireLimits.steadyCurrentA(WireSize.ofAreaMm2(areaMm2));

        assertTrue(WireLimits.steadyCurrentA(WireSize.ofAreaMm2(1.01 * areaMm2)) > amps);
        assertTrue(amps > 0);
    }

    /**
     * Preece, I = a·d^1.5 with a = 10 244 for copper and inches (quoted by Brooks, Onderdonk's and
     * Preece's equations), worked out for some gauges.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 333",
        "12, 235",
        "14, 166",
        "16, 117",
        "18, 82.9",
        "20, 58.5",
        "22, 41.3",
        "24, 29.2",
        "26, 20.6",
        "28, 14.6",
        "30, 10.3",
        "32, 7.3"
    })
    void meltingCurrentA_longRun_isPreeces(int number, double amps) {
        assertEquals(amps, WireLimits.meltingCurrentA(new Gauge(number).size()), 0.01 * amps);
    }

    /**
     * Onderdonk for AWG 16 (2581 circular mils) from 25 °C in 5 s: 168.9 A. The case is known from
     * a forum, which got 178 A by a slip of sign.
     */
    @Test
    void meltingCurrentA_fiveSeconds_isOnderdonks() {
        assertEquals(168.9, WireLimits.meltingCurrentA(new Gauge(16).size(), 5, 25), 1.7);
    }

    /**
     * Cable short-circuit form: (I/A)²·t = 0.0297·log10((T2 + 234)/(T1 + 234)), A in circular mils.
     * 0.0297 is Onderdonk's 1/33 rounded otherwise, so the two agree within 2 %.
     */
    @ParameterizedTest
    @CsvSource({"10, 1000", "18, 200", "24, 100"})
    void meltingTimeS_cableFormula_agrees(int number, double currentA) {
        double mils = new Gauge(number).diameterM() / 25.4e-6;
        double seconds = 0.0297 * Math.log10((1083 + 234) / (20.0 + 234)) * Math.pow(mils, 4) / (currentA * currentA);

        assertEquals(seconds, WireLimits.meltingTimeS(new Gauge(number).size(), currentA, 20), 0.021 * seconds);
    }

    @Property
    void meltingTimeS_ofItsOwnCurrent_isTheTime(
            @ForAll @DoubleRange(min = 0.05, max = 20) @Scale(10) double areaMm2,
            @ForAll @DoubleRange(min = 0.001, max = 10) @Scale(10) double timeS,
            @ForAll @DoubleRange(min = -40, max = 100) @Scale(10) double startC) {
        WireSize size = WireSize.ofAreaMm2(areaMm2);
        double currentA = WireLimits.meltingCurrentA(size, timeS, startC);

        assertEquals(timeS, WireLimits.meltingTimeS(size, currentA, startC), 1e-9 * timeS);
    }

    @Test
    void meltingTimeS_alreadyMolten_isRefused() {
        WireSize size = new Gauge(18).size();

        assertThrows(IllegalArgumentException.class, () -> WireLimits.meltingTimeS(size, 100, 1083));
        assertThrows(IllegalArgumentException.class, () -> WireLimits.meltingTimeS(size, 0, 20));
    }
}
