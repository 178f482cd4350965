package org.sagwise.part;

import java.util.List;
import org.sagwise.part.key.EffectiveKeys;

/**
 * A resettable fuse: a polymer whose resistance climbs steeply once it is warm. One lump at one
 * temperature that loses heat in proportion to what it is above the air. Its loss follows from the
 * currents it is sold by: between the one it holds for ever and the one at which it surely trips, at
 * their geometric mean, the heat of the warm polymer just outgrows what the air takes. The watts it
 * takes when tripped are no setting, they follow; data sheets confirm them (see the tests).
 *
 * @param holdA current that it lets pass for ever at 23 °C (A), above 0
 * @param tripA current that surely trips it at 23 °C (A), at least {@code holdA}
 * @param ohm resistance when cold, an hour after it has tripped once (Ω), above 0
 * @param tripS time in which five times {@code holdA} trips it (s), above 0
 */
public record PtcSpec(double holdA, double tripA, double ohm, double tripS) {

    /** Air at which data sheets give currents, °C. */
    public static final double RATED_C = 23;

    /**
     * Where it has twice its cold resistance, and counts as tripped, °C. Driven on it settles some 20
     * K above, about 125 °C as is usual: from memory, no source at hand.
     */
    public static final double SWITCH_C = 105;

    /** Warming by which its resistance grows e-fold beyond that, K: a decade each 7 K, teaching value. */
    private static final double STEEP_K = 3;

    /** It grows so many times at most; beyond that such a device burns. From memory, no source at hand. */
    private static final double MOST_GROWTH = 1e6;

    /** Times its holding current at which data sheets give the time to trip. */
    public static final double TIMED_AT = 5;

    /** Usual ratio of the current that trips to that which is held (data sheets of polymer devices). */
    static final double USUAL_TRIP_RATIO = 2;

    /** Usual product of the resistance and the square of the held current, W: data sheet at 16 V, 0.9 to 1.6. */
    static final double USUAL_W = 1.2;

    /** Usual time to trip at five times the held current for each ampere of it, s/A: data sheet at 16 V, 0.7 to 1.9. */
    static final double USUAL_S_PER_A = 1.1;

    /** What a cell's own PTC has of the cell's resistance, share: teaching value. */
    static final double CELL_SHARE = 0.25;

    /** Current over capacity (1/h) that the PTC of a cell without a known limit holds: from memory. */
    static final double CELL_HOLD_RATE = 2;

    /**
     * Volts across that of a cell once it has tripped, as a multiple of those of one full cell, from which on it is not
     * counted on any more. NASA NESC Technical Bulletin 09-02: it guards a single cell in an
     * external short, and may fail at the voltage of a row. How many volts it bears is left open
     * there; here none of a row: teaching value.
     */
    public static final double CELL_MOST_FULL = 1.5;

    /** Temperature from which on the rated least tripping current heats it faster than the air cools it, °C. */
    private static final double KNEE_C = kneeC();

    public PtcSpec {
        Require.positive(holdA, "holdA");
        Require.positive(tripA, "tripA");
        Require.positive(ohm, "ohm");
        Require.positive(tripS, "tripS");
    }

    /** The resettable fuse that these values describe. */
    public static PtcSpec of(EffectiveKeys values) {
        return new PtcSpec(values.need("hold_A"), values.need("trip_A"), values.milli("mohm"), values.need("trip_s"));
    }

    /**
     * The ring in the cap of an ordinary cell: holds the cell's continuous limit, trips like any of
     * its size.
     *
     * @param holdA current that it holds for ever (A), above 0
     * @param ohm resistance when cold (Ω), above 0
     */
    static PtcSpec inCell(double holdA, double ohm) {
        return new PtcSpec(holdA, USUAL_TRIP_RATIO * holdA, ohm, USUAL_S_PER_A * holdA);
    }

    /** Where (T − 23 °C)/R(T) is largest; settles to a millionth of a kelvin within a few rounds. */
    private static double kneeC() {
        double kneeC = SWITCH_C;
        for (int i = 0; i < 20; i++) {
            kneeC = SWITCH_C - STEEP_K * Math.log((kneeC - RATED_C) / STEEP_K - 1);
        }
        return kneeC;
    }

    private static double growth(double temperatureC) {
        return Math.min(MOST_GROWTH, 1 + Math.exp((temperatureC - SWITCH_C) / STEEP_K));
    }

    /** Resistance at a temperature (°C), Ω. */
    public double ohmAt(double temperatureC) {
        return ohm * growth(temperatureC);
    }

    /** Smallest current (A) that trips it in the long run in air of this temperature (°C); none from the knee on. */
    public double leastTripA(double airC) {
        return Math.sqrt(holdA * tripA * Math.max(0, KNEE_C - airC) / (KNEE_C - RATED_C));
    }

    /** Heat that it loses for each degree above the air, W/K. */
    public double lossWPerK() {
        return holdA * tripA * ohmAt(KNEE_C) / (KNEE_C - RATED_C);
    }

    /**
     * Heat that warms it by one degree (J/K): what five times the held current brings in the time to
     * trip, over the way to the switch temperature. What is lost meanwhile is left out, so that it
     * takes some percent longer.
     */
    public double heatCapacityJPerK() {
        double currentA = TIMED_AT * holdA;
        return currentA * currentA * ohm * tripS / (SWITCH_C - RATED_C);
    }

    /**
     * Temperature (°C) after constant heat, for one that loses it to a cell: exact, however long.
     *
     * @param temperatureC temperature at the start (°C)
     * @param heatW heat made in it (W)
     * @param cellC temperature of the cell (°C)
     * @param durationS duration (s), 0 or more
     */
    public double after(double temperatureC, double heatW, double cellC, double durationS) {
        double settled = cellC + heatW / lossWPerK();
        return settled + (temperatureC - settled) * Math.exp(-durationS * lossWPerK() / heatCapacityJPerK());
    }

    /** How it warms and cools. */
    public CoilThermal thermal() {
        return new CoilThermal(heatCapacityJPerK(), 0, List.of(new CoilThermal.Even(1, lossWPerK())));
    }

    /** Below this temperature (°C) it counts as reset: half of its warmth above the air is gone. */
    public static double resetC(double airC) {
        return (SWITCH_C + airC) / 2;
    }
}
