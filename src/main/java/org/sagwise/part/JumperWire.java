package org.sagwise.part;

import java.util.List;

/**
 * A piece of copper wire.
 *
 * @param size cross-section
 * @param lengthM length (m), above 0
 */
public record JumperWire(WireSize size, double lengthM) {

    /**
     * 45 W/(m²·K) to still air: teaching value, so chosen that together with the radiation the
     * current of Preece's formula ({@link WireLimits#meltingCurrentA(WireSize)}) brings a bare wire
     * in the long run to its melting point within some per cent, whatever its thickness.
     */
    public static final double STILL_AIR_W_PER_M2K = 45;

    /** Emissivity of oxidised copper: from memory, no source at hand. */
    private static final double EMISSIVITY = 0.9;

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

    /** How the bare wire warms and cools in still air; insulation is left out. */
    public CoilThermal thermal() {
        double surfaceM2 = Math.PI * size.diameterM() * lengthM;
        return new CoilThermal(
                heatCapacityJPerK(),
                EMISSIVITY * surfaceM2,
                List.of(new CoilThermal.Even(surfaceM2, STILL_AIR_W_PER_M2K)));
    }
}
