package org.sagwise.run;

import java.util.List;
import org.sagwise.part.Band;

/**
 * How far the constants of a run stand from their usual values. Sources disagree and parts differ,
 * so that the time until something happens is a band and no number; the band is found by running
 * with the corners of the spread.
 *
 * @param resistance factor on the internal resistance of cells
 * @param heatCapacity factor on what warms cells by a degree
 * @param heatLoss factor on what everything loses to the air
 * @param threshold where within their bands things begin: 0 the lower end, 1 the upper
 */
public record Spread(double resistance, double heatCapacity, double heatLoss, double threshold) {

    /** The usual constants; what begins within a band begins at its lower end. */
    public static final Spread USUAL = new Spread(1, 1, 1, 0);

    /** Cells may differ from their usual resistance by this share: teaching value. */
    private static final double RESISTANCE = 0.3;

    /** One 18650 takes 37 to 55 J/K against 47 usual: from memory, no source at hand. */
    private static final double LIGHT = 0.8;

    private static final double HEAVY = 1.18;

    /** 5 to 15 W/(m²·K) against 10 usual: from memory, no source at hand. */
    private static final double CALM = 0.5;

    private static final double BREEZE = 1.5;

    /**
     * A cell whose current breaks down in a short, because the charge it carries cannot move up
     * fast enough: the currents of shorted cells fall within seconds (from memory, no source at
     * hand). The model knows no such limit, so this stands for it at the late end of a band, and
     * there alone. The factor is a teaching value.
     */
    static final Spread STARVED = new Spread(2.5, HEAVY, BREEZE, 1);

    /** The corners between which the answer is looked for: early ones first. */
    static List<Spread> corners() {
        return List.of(
                new Spread(1 - RESISTANCE, LIGHT, CALM, 0),
                new Spread(1 + RESISTANCE, LIGHT, CALM, 0),
                new Spread(1 - RESISTANCE, HEAVY, BREEZE, 1),
                new Spread(1 + RESISTANCE, HEAVY, BREEZE, 1));
    }

    /** Where something begins that begins within a band. */
    double within(Band band) {
        return band.from() + threshold * (band.to() - band.from());
    }
}
