package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a bare jumper warms, between two published currents. */
class JumperWireThermalTest {

    private static double settledC(JumperWire wire, double ampere) {
        double lowC = 25;
        double highC = 5000;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (lowC + highC);
            double heatW = ampere * ampere * wire.ohmAt(middle);
            if (wire.thermal().lossW(middle, 25) > heatW) {
                highC = middle;
            } else {
                lowC = middle;
            }
        }
        return lowC;
    }

    /**
     * The current of Preece's formula (quoted by D. Brooks, Onderdonk's and Preece's equations)
     * brings it to melting: within a tenth of the current.
     */
    @ParameterizedTest
    @ValueSource(ints = {12, 18, 24, 30})
    void thermal_atPreecesCurrent_settlesAtMelting(int gauge) {
        JumperWire wire = new JumperWire(new Gauge(gauge).size(), 0.1);
        double meltingA = WireLimits.meltingCurrentA(wire.size());

        assertTrue(settledC(wire, 0.9 * meltingA) < Copper.MELTING_C);
        assertTrue(settledC(wire, 1.1 * meltingA) > Copper.MELTING_C);
    }

    /**
     * Insulation of 60 °C in air of 30 °C may warm by 30 K at the steady free-air current
     * (Kuphaldt, Lessons in Electric Circuits, vol. I, ch. 12); bare wire warms by less.
     */
    @ParameterizedTest
    @ValueSource(ints = {10, 14, 18, 20})
    void thermal_atSteadyCurrent_staysWithinTheInsulation(int gauge) {
        JumperWire wire = new JumperWire(new Gauge(gauge).size(), 0.1);
        double warmerK = settledC(wire, WireLimits.steadyCurrentA(wire.size())) - 25;

        assertTrue(warmerK > 5 && warmerK < 40, "warms by " + warmerK);
    }

    /**
     * A short of a second: nearly all heat stays inside, so that it melts about as soon as
     * Onderdonk's formula says.
     */
    @ParameterizedTest
    @ValueSource(ints = {18, 24})
    void thermal_inASecond_meltsAboutAsOnderdonkSays(int gauge) {
        JumperWire wire = new JumperWire(new Gauge(gauge).size(), 0.1);
        double ampere = WireLimits.meltingCurrentA(wire.size(), 1, 25);
        double temperatureC = 25;
        double seconds = 0;
        while (temperatureC < Copper.MELTING_C && seconds < 5) {
            double heatW = ampere * ampere * wire.ohmAt(temperatureC);
            temperatureC += 1e-4 * wire.thermal().rateKPerS(heatW, temperatureC, 25);
            seconds += 1e-4;
        }

        assertEquals(1, seconds, 0.2);
    }
}
