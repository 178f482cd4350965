package org.sagwise.part;

import java.util.OptionalDouble;

/**
 * A metal of which coils are wound.
 *
 * @param card what the catalogue says about it
 * @param resistivityOhmM resistivity at 20 °C (Ω·m), above 0
 * @param spreadOhmM how far a delivered wire may lie from it to either side (Ω·m), above 0; empty where no
 *     source says
 * @param factor change of resistance with temperature
 * @param densityKgPerM3 density (kg/m³), above 0
 * @param specificHeatJPerKgK specific heat near room temperature (J/(kg·K)), above 0
 * @param meltingC temperature at which it begins to melt (°C)
 * @param emissivity share of a black body's heat radiation that an oxidised wire gives off, above
 *     0, at most 1
 */
public record Alloy(
        Card card,
        double resistivityOhmM,
        OptionalDouble spreadOhmM,
        TemperatureFactor factor,
        double densityKgPerM3,
        double specificHeatJPerKgK,
        double meltingC,
        double emissivity)
        implements CatalogueEntry {

    public Alloy {
        Require.positive(resistivityOhmM, "resistivityOhmM");
        spreadOhmM.ifPresent(spread -> Require.positive(spread, "spreadOhmM"));
        Require.positive(densityKgPerM3, "densityKgPerM3");
        Require.positive(specificHeatJPerKgK, "specificHeatJPerKgK");
        Require.positive(meltingC, "meltingC");
        Require.share(emissivity, "emissivity");
    }

    /** The same metal of another resistivity at 20 °C (Ω·m). */
    Alloy withResistivity(double otherOhmM) {
        return new Alloy(
                card, otherOhmM, spreadOhmM, factor, densityKgPerM3, specificHeatJPerKgK, meltingC, emissivity);
    }

    /** Resistivity (Ω·m) at this temperature (°C). */
    public double resistivityOhmM(double temperatureC) {
        return resistivityOhmM * factor.at(temperatureC);
    }
}
