package org.sagwise.part;

import java.util.List;

/**
 * How a coil or a wire warms and cools: one lump at one temperature that loses heat by convection
 * and radiation to still air and to surroundings of its temperature.
 *
 * @param heatCapacityJPerK heat that warms it by one degree (J/K), above 0
 * @param blackM2 surface of a black body that radiates as much (m²), 0 or more
 * @param cooled what loses heat by convection, piece by piece
 * @param airFactor factor on convection: 1 as usual
 */
public record CoilThermal(double heatCapacityJPerK, double blackM2, List<Cooled> cooled, double airFactor) {

    /** Stefan–Boltzmann constant (W/(m²·K⁴)), SI 2019. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private static final double ZERO_C_IN_K = 273.15;

    /** A piece that loses heat by convection. */
    public interface Cooled {
        /** Heat it loses for each degree above the air (W/K) at these temperatures (°C). */
        double lossWPerK(double temperatureC, double airC);
    }

    /**
     * A horizontal cylinder in still air.
     *
     * @param diameterM its diameter (m), above 0
     * @param surfaceM2 the surface from which it loses heat (m²), 0 or more
     */
    public record Cylinder(double diameterM, double surfaceM2) implements Cooled {

        public Cylinder {
            Require.positive(diameterM, "diameterM");
            Require.notNegative(surfaceM2, "surfaceM2");
        }

        @Override
        public double lossWPerK(double temperatureC, double airC) {
            return surfaceM2 * StillAir.heatTransferWPerM2K(diameterM, temperatureC, airC);
        }
    }

    /**
     * A surface that loses the same heat for each degree, however hot.
     *
     * @param surfaceM2 the surface (m²), 0 or more
     * @param heatTransferWPerM2K heat lost by convection (W/(m²·K)), 0 or more
     */
    public record Even(double surfaceM2, double heatTransferWPerM2K) implements Cooled {

        public Even {
            Require.notNegative(surfaceM2, "surfaceM2");
            Require.notNegative(heatTransferWPerM2K, "heatTransferWPerM2K");
        }

        @Override
        public double lossWPerK(double temperatureC, double airC) {
            return surfaceM2 * heatTransferWPerM2K;
        }
    }

    public CoilThermal {
        Require.positive(heatCapacityJPerK, "heatCapacityJPerK");
        Require.notNegative(blackM2, "blackM2");
        Require.notNegative(airFactor, "airFactor");
        cooled = List.copyOf(cooled);
    }

    /** One that loses heat as usual in still air. */
    public CoilThermal(double heatCapacityJPerK, double blackM2, List<Cooled> cooled) {
        this(heatCapacityJPerK, blackM2, cooled, 1);
    }

    /** The same with its convection multiplied. */
    public CoilThermal withAirFactor(double factor) {
        return new CoilThermal(heatCapacityJPerK, blackM2, cooled, factor);
    }

    /**
     * Heat (W) that it loses to the air and to its surroundings.
     *
     * @param temperatureC its temperature (°C), above −273.15
     * @param ambientC temperature of the air (°C), above −273.15
     */
    public double lossW(double temperatureC, double ambientC) {
        double hot = squared(temperatureC + ZERO_C_IN_K);
        double cool = squared(ambientC + ZERO_C_IN_K);
        double convectedWPerK = 0;
        for (Cooled piece : cooled) {
            convectedWPerK += piece.lossWPerK(temperatureC, ambientC);
        }
        return airFactor * convectedWPerK * (temperatureC - ambientC)
                + blackM2 * STEFAN_BOLTZMANN * (hot * hot - cool * cool);
    }

    private static double squared(double x) {
        return x * x;
    }

    /** Change of temperature (K/s) at this power (W). */
    public double rateKPerS(double powerW, double temperatureC, double ambientC) {
        return (powerW - lossW(temperatureC, ambientC)) / heatCapacityJPerK;
    }
}
