package org.sagwise.plan;

import org.sagwise.part.Band;
import org.sagwise.part.CoilThermal;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.TemperatureFactor;

/**
 * A coil as it is wound, and what it does at given volts: dry and in still air, which is the worst case. A wet wick keeps
 * it far cooler.
 *
 * @param winding how it is wound
 * @param volts at its ends, held there (V), above 0
 * @param airC temperature of the air (°C), above −273.15
 */
public record WoundCoil(CoilWinding winding, double volts, double airC) {

    /**
     * Where a body begins to glow so that an eye in the dark sees it, °C: 798 K, J. W. Draper, "On the production of
     * light by heat", Philosophical Magazine 30 (1847), 345–360, who gave 977 °F.
     */
    public static final double GLOW_C = 525;

    private static final double STEP_C = 1;
    private static final double ACCURACY_C = 0.01;

    public WoundCoil {
        if (!(volts > 0)) {
            throw new IllegalArgumentException("volts must be above 0 but are " + volts);
        }
    }

    /** Ohms at 20 °C. */
    public double ohm() {
        return winding.ohm();
    }

    /** Ohms at 20 °C within which it lies, as wire is sold. */
    public Band ohmSpread() {
        return winding.ohmSpread();
    }

    /** Ohms as it begins to glow. */
    public double glowingOhm() {
        return winding.ohmAt(GLOW_C);
    }

    /** Watts at these volts in the cold coil, at 20 °C. */
    public double powerW() {
        return powerW(TemperatureFactor.REFERENCE_C);
    }

    /** Watts as it begins to glow. */
    public double glowingW() {
        return powerW(GLOW_C);
    }

    private double powerW(double temperatureC) {
        return volts * volts / winding.ohmAt(temperatureC);
    }

    /** Watts of the cold coil on each square millimetre of all its wire, legs included (mW/mm²). */
    public double surfaceLoadMwPerMm2() {
        return winding.surfaceLoadMwPerMm2(powerW());
    }

    /**
     * How long until it begins to glow, dry (s); infinite if it never gets so hot. With one temperature for all of it:
     * t = ∫ m·c / (P(T) − loss(T)) dT.
     */
    public double glowsAfterS() {
        CoilThermal thermal = winding.thermal();
        double seconds = 0;
        for (double atC = airC; atC < GLOW_C; atC += STEP_C) {
            double step = Math.min(STEP_C, GLOW_C - atC);
            double middle = atC + 0.5 * step;
            double rate = thermal.rateKPerS(powerW(middle), middle, airC);
            if (!(rate > 0)) {
                return Double.POSITIVE_INFINITY;
            }
            seconds += step / rate;
        }
        return seconds;
    }

    /** Where it stays if the button is held, dry (°C); no more than where it melts. */
    public double steadyC() {
        CoilThermal thermal = winding.thermal();
        double coolC = airC;
        double hotC = winding.wire().alloy().meltingC();
        if (isHotter(thermal, hotC)) {
            return hotC;
        }
        while (hotC - coolC > ACCURACY_C) {
            double middle = 0.5 * (coolC + hotC);
            if (isHotter(thermal, middle)) {
                coolC = middle;
            } else {
                hotC = middle;
            }
        }
        return hotC;
    }

    /** Whether it would melt if the button were held, dry. */
    public boolean melts() {
        return isHotter(winding.thermal(), winding.wire().alloy().meltingC());
    }

    private boolean isHotter(CoilThermal thermal, double temperatureC) {
        return thermal.rateKPerS(powerW(temperatureC), temperatureC, airC) > 0;
    }
}
