package org.sagwise.run;

import java.util.function.DoubleUnaryOperator;
import org.sagwise.part.CoilThermal;

/**
 * A coil or a jumper that warms: one lump whose resistance follows its temperature.
 *
 * @param index place of the coil among the coils, or of the link among the links
 * @param name id of the coil or name of the link
 * @param thermal how it warms and cools
 * @param ohmAt resistance at a temperature (°C), Ω
 * @param elsewhereOhm part of it that lies outside the metal and warms something else, Ω
 * @param meltingC where its metal melts, °C
 */
record HotModel(
        int index, String name, CoilThermal thermal, DoubleUnaryOperator ohmAt, double elsewhereOhm, double meltingC) {

    private static final double ZERO_C_IN_K = 273.15;

    /** Resistance at a temperature (°C), Ω. */
    double ohm(double temperatureC) {
        return ohmAt.applyAsDouble(temperatureC);
    }

    /** Power that warms the metal at this current (A) and temperature (°C), W. */
    double heatW(double currentA, double temperatureC) {
        return currentA * currentA * (ohm(temperatureC) - elsewhereOhm);
    }

    /**
     * Temperature after constant power: exponential Rosenbrock–Euler (M. Hochbruck, A. Ostermann,
     * "Exponential integrators", Acta Numerica 19, 2010): exact for a linear loss, of second order
     * for the fourth power.
     */
    double warmed(double temperatureC, double powerW, double ambientC, double seconds) {
        double rate = thermal.rateKPerS(powerW, temperatureC, ambientC);
        double z = -slope(temperatureC) * seconds;
        double phi = Math.abs(z) < 1e-9 ? 1 : Math.expm1(z) / z;
        return temperatureC + seconds * phi * rate;
    }

    /** Share of a difference of temperature that is lost each second (1/s). */
    private double slope(double temperatureC) {
        double hot = temperatureC + ZERO_C_IN_K;
        double radiation = 4 * thermal.emissivity() * CoilThermal.STEFAN_BOLTZMANN * hot * hot * hot;
        return thermal.surfaceM2() * (thermal.heatTransferWPerM2K() + radiation) / thermal.heatCapacityJPerK();
    }
}
