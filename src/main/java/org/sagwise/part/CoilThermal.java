package org.sagwise.part;

/**
 * How a coil warms and cools: one lump at one temperature that loses heat by convection and
 * radiation.
 *
 * @param heatCapacityJPerK heat that warms it by one degree (J/K), above 0
 * @param surfaceM2 surface that loses heat (m²), above 0
 * @param heatTransferWPerM2K heat lost by convection (W/(m²·K)), 0 or more
 * @param emissivity share of a black body's radiation, above 0, at most 1
 */
public record CoilThermal(double heatCapacityJPerK, double surfaceM2, double heatTransferWPerM2K, double emissivity) {

    /** Stefan–Boltzmann constant (W/(m²·K⁴)), SI 2019. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /**
     * 60 W/(m²·K): bare thin wire in still air. Teaching value: a Nusselt number of about 0.7, air
     * of 0.035 W/(m·K) and a wire of 0.4 mm; from memory, no source at hand.
     */
    public static final double DRY_W_PER_M2K = 60;

    private static final double ZERO_C_IN_K = 273.15;

    public CoilThermal {
        Require.positive(heatCapacityJPerK, "heatCapacityJPerK");
        Require.positive(surfaceM2, "surfaceM2");
        Require.notNegative(heatTransferWPerM2K, "heatTransferWPerM2K");
        Require.share(emissivity, "emissivity");
    }

    /** The same coil with another convection (W/(m²·K)). */
    public CoilThermal withHeatTransfer(double wPerM2K) {
        return new CoilThermal(heatCapacityJPerK, surfaceM2, wPerM2K, emissivity);
    }

    /**
     * Heat (W) that the coil loses to the air and to its surroundings.
     *
     * @param temperatureC temperature of the coil (°C), above −273.15
     * @param ambientC temperature of the air (°C), above −273.15
     */
    public double lossW(double temperatureC, double ambientC) {
        double hot = temperatureC + ZERO_C_IN_K;
        double cool = ambientC + ZERO_C_IN_K;
        double radiated = emissivity * STEFAN_BOLTZMANN * (Math.pow(hot, 4) - Math.pow(cool, 4));
        return surfaceM2 * (heatTransferWPerM2K * (temperatureC - ambientC) + radiated);
    }

    /** Change of temperature (K/s) at this power (W). */
    public double rateKPerS(double powerW, double temperatureC, double ambientC) {
        return (powerW - lossW(temperatureC, ambientC)) / heatCapacityJPerK;
    }
}
