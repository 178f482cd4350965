package org.sagwise.part;

/**
 * Ohmic internal resistance R₀ of a cell against temperature, charge and health: the sag at the
 * instant of firing; and what builds up beside it with time, {@link CellPolarisation}.
 *
 * <p>The three influences are factors that are multiplied. Each is a teaching model fitted to
 * published rows; real cells differ.
 *
 * @param internalOhm resistance at 25 °C at the reference charge and health (Ω), 0 or more
 * @param referenceCharge charge at which {@code internalOhm} holds
 * @param referenceHealth health at which {@code internalOhm} holds, above 0, at most 1
 */
public record CellResistance(double internalOhm, double referenceCharge, double referenceHealth) {

    /** Temperature at which internal resistances are given (°C). */
    public static final double REFERENCE_C = 25;

    /** Coldest temperature for which the temperature factor is worked out (°C). */
    public static final double COLDEST_C = -40;

    /**
     * Hottest temperature for which the temperature factor is worked out (°C): the pulses it is
     * fitted to end at 45 °C, and what a hotter cell gains in conduction it loses elsewhere.
     */
    public static final double HOTTEST_C = 60;

    /** Molar gas constant (J/(mol·K)), SI 2019. */
    private static final double GAS_CONSTANT = 8.314462618;

    private static final double ZERO_C_IN_K = 273.15;

    /** Share of the resistance at 25 °C that rises steeply in the cold; fitted, see below. */
    private static final double STEEP_SHARE = 0.10;

    /** Activation energy of the flat share (J/mol); fitted, see below. */
    private static final double FLAT_J_PER_MOL = 8_000;

    /**
     * Activation energy of the steep share (J/mol). Charge transfer: 20–60 kJ/mol in the
     * literature, from memory, no source at hand.
     */
    private static final double STEEP_J_PER_MOL = 50_000;

    /**
     * Growth of resistance for each unit of lost health: doubled at 80 %. Teaching value: loss of a
     * fifth of the capacity and doubled resistance are the two usual signs that a cell's first life
     * is over, here made to come together.
     */
    private static final double GROWTH_PER_LOST_HEALTH = 5;

    /**
     * Resistance of the quicker and of the slower part of the slow sag as shares of R₀ at half
     * charge, and how both rise toward empty: the rows of M. Chen and G. A. Rincón-Mora, IEEE Trans.
     * Energy Convers. 21(2), 2006, for an 850 mAh polymer cell, 0.04669 and 0.04984 Ω beside 0.07446
     * Ω, with 1 + 6.87·e^(−29.14·charge) and 1 + 132·e^(−155.2·charge).
     */
    private static final double QUICK_SHARE = 0.627;

    private static final double QUICK_RISE = 6.87;
    private static final double QUICK_FALL = 29.14;
    private static final double SLOW_SHARE = 0.669;
    private static final double SLOW_RISE = 132;
    private static final double SLOW_FALL = 155.2;

    /** Least charge for which that rise is worked out: teaching value. */
    private static final double LEAST_CHARGE = 0.01;

    /**
     * Share of the charge that a cell does not give at these temperatures (°C), for the rise toward
     * empty comes so much sooner. Low currents: the gauge tables of four phone cells in public
     * kernel sources keep 87 to 93 % at 0 °C and 68 to 89 % at −10 °C; a 2 Ah 18650 at 1 A and 4 °C
     * gives 90 % (NASA PCoE battery data, cells 47 and 5). At −20 °C it is drawn on from there. It
     * comes back as the cell warms.
     */
    private static final double[] COLD_C = {-20, -10, 0, REFERENCE_C};

    private static final double[] COLD_SHARES = {0.27, 0.17, 0.12, 0};

    /**
     * Activation energy of the slower part (J/mol), by which diffusion in the electrodes slows in
     * the cold. So chosen that the energy which a 3.0 Ah NMC 18650 gives at 3.87 to 19.34 A comes
     * out as measured (open data of the Battery Testing Consortium, Oxford Brookes University,
     * 2021–22); 20–60 kJ/mol in the literature, from memory, no source at hand.
     */
    private static final double DIFFUSION_J_PER_MOL = 35_000;

    private static final double[] CHARGES = {0, 0.04, 0.086, 0.147, 0.19, 0.28, 0.50};
    private static final double[] CHARGE_FACTORS = {2.02, 1.685, 1.301, 1.137, 1.059, 1.018, 1};

    public CellResistance {
        Require.notNegative(internalOhm, "internalOhm");
        Require.finite(referenceCharge, "referenceCharge");
        Require.share(referenceHealth, "referenceHealth");
    }

    /** Resistance of a catalogue model, whose number holds for a new cell above half charge. */
    public static CellResistance ofModel(double internalOhm) {
        return new CellResistance(internalOhm, 1, 1);
    }

    /**
     * Resistance of a cell whose number was measured as it is: at 25 °C it has exactly this
     * resistance at this charge and health, and changes from there.
     */
    public static CellResistance measured(double internalOhm, double charge, double health) {
        return new CellResistance(internalOhm, charge, health);
    }

    /**
     * Resistance (Ω) of the cell as it is now.
     *
     * @param temperatureC cell temperature (°C), counted as {@link #COLDEST_C} when colder and as
     *     {@link #HOTTEST_C} when hotter
     * @param charge charge, any value
     * @param health share of the new capacity that is left, above 0, at most 1
     */
    public double ohmAt(double temperatureC, double charge, double health) {
        return internalOhm
                * temperatureFactor(temperatureC)
                * (chargeFactor(charge) / chargeFactor(referenceCharge))
                * (healthFactor(health) / healthFactor(referenceHealth));
    }

    /**
     * The quicker part of the slow sag of the cell as it is now; other arguments as for {@link
     * #ohmAt}.
     *
     * @param currentA current (A), positive when the cell discharges: only then it rises toward
     *     empty, for the electrode that has taken up all it can gives lithium back readily
     */
    public CellPolarisation quick(double temperatureC, double charge, double health, double currentA) {
        double ohm = QUICK_SHARE * newOhm(health) * temperatureFactor(temperatureC);
        double emptying = emptying(QUICK_RISE, QUICK_FALL, temperatureC, charge, currentA);
        return new CellPolarisation(ohm * (1 + emptying), CellPolarisation.QUICK_S);
    }

    /** The slower part of the slow sag of the cell as it is now; arguments as for {@link #quick}. */
    public CellPolarisation slow(double temperatureC, double charge, double health, double currentA) {
        double ohm = SLOW_SHARE * newOhm(health) * diffusionFactor(temperatureC);
        double emptying = emptying(SLOW_RISE, SLOW_FALL, temperatureC, charge, currentA);
        return new CellPolarisation(ohm * (1 + emptying), CellPolarisation.SLOW_S);
    }

    private static double emptying(double rise, double fall, double temperatureC, double charge, double currentA) {
        return currentA <= 0 ? 0 : rise * Math.exp(-fall * Math.max(LEAST_CHARGE, charge - coldShare(temperatureC)));
    }

    /** Share of its charge that a cell does not give at this temperature (°C). */
    static double coldShare(double temperatureC) {
        return temperatureC >= REFERENCE_C ? 0 : Interpolation.clamped(COLD_C, COLD_SHARES, temperatureC);
    }

    /** R₀ (Ω) at 25 °C above half charge. */
    private double newOhm(double health) {
        return internalOhm / chargeFactor(referenceCharge) * (healthFactor(health) / healthFactor(referenceHealth));
    }

    /**
     * Times as long as at 25 °C that lithium takes to move through the grains of the electrodes at
     * this temperature (°C); bounded as {@link #temperatureFactor} is.
     */
    public static double diffusionFactor(double temperatureC) {
        return Math.exp(DIFFUSION_J_PER_MOL / GAS_CONSTANT * reciprocal(temperatureC));
    }

    /**
     * Resistance at this temperature (°C) over resistance at 25 °C: exactly 1 at 25 °C, falling
     * between {@link #COLDEST_C} and {@link #HOTTEST_C}, level beyond.
     *
     * <p>Two Arrhenius terms, fitted to ten-second pulses on a 3.0 Ah NMC 18650 at 5, 15, 25, 35
     * and 45 °C: 44.0, 32.6, 28.4, 24.2, 22.6 mΩ at 3.7 V, and 58.1, 42.9, 35.4, 29.0, 25.8 mΩ full
     * (worked out from the open data of the Battery Testing Consortium, Oxford Brookes University,
     * 2021–22). It meets both rows within 6 %. One term through the same rows has an activation
     * energy of 12 kJ/mol, but is too gentle in the cold.
     */
    public static double temperatureFactor(double temperatureC) {
        double reciprocal = reciprocal(temperatureC);
        double flat = Math.expm1(FLAT_J_PER_MOL / GAS_CONSTANT * reciprocal);
        double steep = Math.expm1(STEEP_J_PER_MOL / GAS_CONSTANT * reciprocal);
        return 1 + (1 - STEEP_SHARE) * flat + STEEP_SHARE * steep;
    }

    private static double reciprocal(double temperatureC) {
        double boundedC = Math.max(COLDEST_C, Math.min(HOTTEST_C, temperatureC));
        return 1 / (boundedC + ZERO_C_IN_K) - 1 / (REFERENCE_C + ZERO_C_IN_K);
    }

    /**
     * Resistance at this charge over resistance above half charge: 1 from half charge up, rising
     * towards empty to twice that, and no further below.
     *
     * <p>Two-second pulses on a 3.0 Ah NMC 18650 at 25 °C gave 21.9, 22.3, 23.2, 24.9, 28.5 and
     * 36.9 mΩ at rest voltages of 3.72, 3.56, 3.47, 3.40, 3.28 and 3.14 V (same open data). The
     * same rows rise a little above that too, by 4 % at 4.02 V and 20 % at 4.18 V; left out, so
     * that one number holds from full to half.
     */
    public static double chargeFactor(double charge) {
        return Interpolation.clamped(CHARGES, CHARGE_FACTORS, charge);
    }

    /** Resistance at this health (above 0, at most 1) over resistance when new. */
    public static double healthFactor(double health) {
        Require.share(health, "health");
        return 1 + GROWTH_PER_LOST_HEALTH * (1 - health);
    }
}
