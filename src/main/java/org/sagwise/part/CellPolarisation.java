package org.sagwise.part;

/**
 * The slow part of sag: a voltage v₁ that builds up under load and fades at rest, as in a resistor
 * R₁ with a capacitor beside it (first-order Thévenin model).
 *
 * <p>R₁ = 0.5 R₀ and a time constant of 10 s are teaching values, chosen because pulses on a 3.0 Ah
 * NMC 18650 at 25 °C gave 21.9 mΩ after two seconds and 28.4 mΩ after ten (worked out from the open
 * data of the Battery Testing Consortium, Oxford Brookes University, 2021–22).
 *
 * @param ohm R₁ (Ω), 0 or more
 * @param timeConstantS time in which 63 % of a change is made (s), above 0
 */
public record CellPolarisation(double ohm, double timeConstantS) {

    /** R₁ as a share of R₀: teaching value. */
    public static final double SHARE_OF_OHMIC = 0.5;

    /** Time constant (s): teaching value. */
    public static final double TIME_CONSTANT_S = 10;

    public CellPolarisation {
        Require.notNegative(ohm, "ohm");
        Require.positive(timeConstantS, "timeConstantS");
    }

    /** The polarisation that belongs to an ohmic resistance R₀ (Ω). */
    public static CellPolarisation besideOhmic(double ohmicOhm) {
        return new CellPolarisation(SHARE_OF_OHMIC * ohmicOhm, TIME_CONSTANT_S);
    }

    /**
     * v₁ (V) after {@code durationS} seconds of constant current: exact, however long the step.
     *
     * @param volts v₁ at the start (V)
     * @param currentA current (A), positive when the cell discharges
     * @param durationS duration (s), 0 or more
     */
    public double after(double volts, double currentA, double durationS) {
        double settled = currentA * ohm;
        return settled + (volts - settled) * Math.exp(-durationS / timeConstantS);
    }

    /**
     * Mean of v₁ (V) over {@code durationS} seconds of constant current: exact, however long.
     *
     * @param volts v₁ at the start (V)
     * @param currentA current (A), positive when the cell discharges
     * @param durationS duration (s), above 0
     */
    public double mean(double volts, double currentA, double durationS) {
        double settled = currentA * ohm;
        return settled + (volts - settled) * meanLeft(durationS);
    }

    /**
     * Mean over {@code durationS} seconds (above 0) of the share of a v₁ that has not faded yet.
     */
    public double meanLeft(double durationS) {
        double ratio = durationS / timeConstantS;
        return -Math.expm1(-ratio) / ratio;
    }
}
