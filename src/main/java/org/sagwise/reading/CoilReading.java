package org.sagwise.reading;

/**
 * What a person could measure at one coil.
 *
 * @param id id of the part
 * @param ohm resistance at this moment, Ω
 * @param voltsV potential of its first terminal minus its second, V
 * @param currentA current from first to second terminal, A
 * @param powerW power, W
 * @param temperatureC temperature taken for the resistance, °C; NaN for a coil of which only the ohms are
 *     known: what it weighs and how it cools is not, so it has none
 */
public record CoilReading(String id, double ohm, double voltsV, double currentA, double powerW, double temperatureC) {}
