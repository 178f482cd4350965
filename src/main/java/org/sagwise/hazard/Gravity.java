package org.sagwise.hazard;

import org.sagwise.part.Distress;

/**
 * The one place that decides how grave a number is. DANGER is kept for what will do harm if nobody
 * stops it; what may go well, and usually does not for long, is a WARNING.
 */
final class Gravity {

    /**
     * Share of the continuous limit from which on a caution is given although the limit holds:
     * common practice, no source.
     */
    static final double NEAR = 0.8;

    /**
     * Multiple of the continuous limit from which on a cell is heavily over it: its heat, i²·R, is
     * then 2.25 times what the limit stands for. This program's choice.
     */
    static final double HEAVY = 1.5;

    /** Multiple of a coil's limit from which on it glows instead of being hot: our choice. */
    static final double GLOWING = 2;

    private Gravity() {}

    /**
     * Of a current that no load limits, A: heavily over the limit of the cell that carries it, or
     * without end because everything is ideal (NaN), it will do harm.
     */
    static Signal unchecked(double currentA, double limitA) {
        return currentA <= limitA ? Signal.WARNING : Signal.DANGER;
    }

    /** Of a current drawn from a cell over its continuous limit, A. */
    static Signal drawn(double currentA, double limitA) {
        return currentA >= HEAVY * limitA ? Signal.DANGER : Signal.WARNING;
    }

    /**
     * Of a current pushed into a cell over its charge limit, A: one that the cell could not even
     * give for long will do harm.
     */
    static Signal pushedIn(double currentA, double dischargeLimitA) {
        return currentA > dischargeLimitA ? Signal.DANGER : Signal.WARNING;
    }

    /** Of a coil over its limit, W. */
    static Signal coil(double powerW, double limitW) {
        return powerW >= GLOWING * limitW ? Signal.WARNING : Signal.CAUTION;
    }

    /** Of a cell above the temperature that makers allow while discharging, °C. */
    static Signal temperature(double temperatureC, Distress distress) {
        return temperatureC >= distress.ventC().from() ? Signal.DANGER : Signal.WARNING;
    }
}
