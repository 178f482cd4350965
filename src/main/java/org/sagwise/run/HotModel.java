package org.sagwise.run;

import java.util.function.DoubleUnaryOperator;

/**
 * A coil, a resettable fuse or a jumper that warms: one lump whose resistance follows its temperature.
 *
 * @param index place of the coil among the coils, or of the link among the links; −1 for a resettable fuse
 * @param name id of the part or name of the link
 * @param heatCapacityJPerK heat that warms it by one degree, J/K
 * @param loss what it loses to the air
 * @param ohmAt resistance at a temperature (°C), Ω
 * @param elsewhereOhm part of it that lies outside the metal and warms something else, Ω
 * @param meltingC where its metal melts, °C; infinite where it does not
 * @param closer how many times closer its temperature must be known than that of metal, whose resistance follows it
 *     gently; 1 for metal
 */
record HotModel(
        int index,
        String name,
        double heatCapacityJPerK,
        LossCurve loss,
        DoubleUnaryOperator ohmAt,
        double elsewhereOhm,
        double meltingC,
        double closer) {

    /** A resettable fuse grows e-fold within a few kelvin: a twentieth of a kelvin is two percent of its ohms. */
    static final double PTC_CLOSER = 10;

    /** Resistance at a temperature (°C), Ω. */
    double ohm(double temperatureC) {
        return ohmAt.applyAsDouble(temperatureC);
    }

    /** Power that warms the metal at this current (A) and temperature (°C), W. */
    double heatW(double currentA, double temperatureC) {
        return currentA * currentA * (ohm(temperatureC) - elsewhereOhm);
    }

    /** Temperature (°C) after constant power (W). */
    double warmed(double temperatureC, double powerW, double seconds) {
        return loss.after(temperatureC, powerW, heatCapacityJPerK, seconds);
    }

    /** By how much a power that is off by this (W) puts it off after some seconds, as it counts for metal, K. */
    double offK(double powerW, double temperatureC, double seconds) {
        double perS = loss.slopeWPerK(temperatureC) / heatCapacityJPerK;
        return closer * powerW / heatCapacityJPerK * seconds * LossCurve.share(perS * seconds);
    }
}
