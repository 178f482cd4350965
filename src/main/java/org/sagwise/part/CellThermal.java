package org.sagwise.part;

/**
 * How a cell warms and cools: one lump of mass with one temperature, losing heat to the air.
 *
 * @param massKg mass (kg), above 0
 * @param specificHeatJPerKgK specific heat (J/(kg·K)), above 0
 * @param areaM2 surface that loses heat (m²), above 0
 * @param heatTransferWPerM2K heat lost by convection and radiation together (W/(m²·K)), above 0
 */
public record CellThermal(double massKg, double specificHeatJPerKgK, double areaM2, double heatTransferWPerM2K) {

    public CellThermal {
        Require.positive(massKg, "massKg");
        Require.positive(specificHeatJPerKgK, "specificHeatJPerKgK");
        Require.positive(areaM2, "areaM2");
        Require.positive(heatTransferWPerM2K, "heatTransferWPerM2K");
    }

    /** A cell of this size and kind that loses heat in this way. */
    public static CellThermal of(CellFormat format, Chemistry chemistry, Cooling cooling) {
        return new CellThermal(format.massKg(), specificHeat(chemistry), format.areaM2(), cooling.wPerM2K());
    }

    /**
     * Specific heat (J/(kg·K)). NMC 1040, NCA 830, LFP 1130 near 30–40 °C at half charge:
     * batterydesign.net, <i>Specific heat capacity of lithium-ion cells</i>, which gives 800–1100
     * for the literature. 1000 for the other kinds: within that range, from memory, no source at
     * hand.
     */
    private static double specificHeat(Chemistry chemistry) {
        return switch (chemistry) {
            case INR -> 1040;
            case NCR -> 830;
            case IFR -> 1130;
            case ICR, IMR -> 1000;
        };
    }

    /** Heat that warms the cell by one degree (J/K). */
    public double heatCapacityJPerK() {
        return massKg * specificHeatJPerKgK;
    }

    /** Heat lost to the air for each degree above it (W/K). */
    public double lossWPerK() {
        return heatTransferWPerM2K * areaM2;
    }

    /** Time in which 63 % of a change of temperature is made (s). */
    public double timeConstantS() {
        return heatCapacityJPerK() / lossWPerK();
    }

    /**
     * Temperature (°C) after {@code durationS} seconds of constant heat: exact, however long the
     * step.
     *
     * @param temperatureC temperature at the start (°C)
     * @param heatW heat made in the cell (W)
     * @param ambientC temperature of the air (°C)
     * @param durationS duration (s), 0 or more
     */
    public double after(double temperatureC, double heatW, double ambientC, double durationS) {
        double settled = ambientC + heatW / lossWPerK();
        return settled + (temperatureC - settled) * Math.exp(-durationS / timeConstantS());
    }
}
