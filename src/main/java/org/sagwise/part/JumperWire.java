package org.sagwise.part;

/**
 * A piece of copper wire.
 *
 * @param size cross-section
 * @param lengthM length (m), above 0
 */
public record JumperWire(WireSize size, double lengthM) {

    public JumperWire {
        Require.positive(lengthM, "lengthM");
    }

    /** Resistance (Ω) at this temperature (°C), without its contacts. */
    public double ohmAt(double temperatureC) {
        return Copper.ohmPerM(size, temperatureC) * lengthM;
    }

    /** Heat that warms it by one degree (J/K). */
    public double heatCapacityJPerK() {
        return size.areaM2() * lengthM * Copper.DENSITY_KG_PER_M3 * Copper.SPECIFIC_HEAT_J_PER_KG_K;
    }
}
