package org.sagwise.plan;

/**
 * What a person reads off a meter at the bench: the cell at rest, then cell and coil while the
 * button is held, and the coil's ohms.
 *
 * @param restV cell at rest, V
 * @param cellV at the cell's ends under load, V
 * @param coilV at the coil's ends under load, V
 * @param coilOhm the coil, Ω
 * @param voltsStep smallest step that the meter shows in volts, V
 * @param ohmStep smallest step that the meter shows in ohms, Ω
 */
public record MeterCheck(double restV, double cellV, double coilV, double coilOhm, double voltsStep, double ohmStep) {

    public MeterCheck {
        if (!(voltsStep >= 0) || !(ohmStep >= 0)) {
            throw new IllegalArgumentException("steps of a meter cannot be below 0");
        }
    }
}
