package org.sagwise.part;

/** Annealed copper, of which jumpers are made. */
public final class Copper {

    /**
     * Resistivity at 20 °C (Ω·m): 1/58 Ω·mm²/m, 100 % of the International Annealed Copper Standard
     * (IEC 60028, 1925). Commercial copper has 97–101 % of its conductivity.
     */
    public static final double RESISTIVITY_OHM_M = 1e-6 / 58;

    /** Change of resistance for each degree from 20 °C (1/K): IEC 60028, constant mass. */
    public static final double PER_KELVIN = 0.00393;

    /** Temperature at which {@link #RESISTIVITY_OHM_M} holds (°C). */
    public static final double REFERENCE_C = 20;

    /** Density (kg/m³): handbook value, from memory, no source at hand. */
    public static final double DENSITY_KG_PER_M3 = 8890;

    /** Specific heat (J/(kg·K)): handbook value, from memory, no source at hand. */
    public static final double SPECIFIC_HEAT_J_PER_KG_K = 385;

    /** Melting temperature (°C): as in published fusing examples. */
    public static final double MELTING_C = 1083;

    private Copper() {}

    /** Resistance at this temperature (°C) over resistance at 20 °C; linear, never below 0.1. */
    public static double temperatureFactor(double temperatureC) {
        return temperatureFactor(temperatureC, PER_KELVIN);
    }

    /** The same with another coefficient (1/K), for books that print another. */
    static double temperatureFactor(double temperatureC, double perKelvin) {
        return Math.max(0.1, 1 + perKelvin * (temperatureC - REFERENCE_C));
    }

    /** Resistance (Ω) of one metre of wire at this temperature (°C). */
    public static double ohmPerM(WireSize size, double temperatureC) {
        return RESISTIVITY_OHM_M / size.areaM2() * temperatureFactor(temperatureC);
    }
}
