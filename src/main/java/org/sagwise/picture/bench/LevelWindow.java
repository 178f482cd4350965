package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;

/**
 * A window in a cell: volts as height. The part that is lost inside is hatched from the top, what
 * reaches the terminals is solid, and a tick marks the cut-off.
 *
 * @param solid share of the height that reaches the terminals, 0 to 1
 * @param hatched share up to which it is hatched, at least {@code solid}
 * @param cutoff share at which the tick stands
 */
record LevelWindow(double solid, double hatched, double cutoff) {

    /** Volts against the window's height, which is the full voltage, or more if the cell has it. */
    static LevelWindow of(double restV, double terminalV, double fullV, double cutoffV) {
        double topV = Math.max(fullV, Math.max(restV, terminalV));
        double lower = Math.min(restV, terminalV);
        double upper = Math.max(restV, terminalV);
        return new LevelWindow(share(lower, topV), share(upper, topV), share(cutoffV, topV));
    }

    private static double share(double volts, double topV) {
        return Double.isNaN(volts) ? 0 : Math.max(0, Math.min(1, volts / topV));
    }

    void paint(ThemedPen pen, Box glass) {
        pen.plate(glass, 1, Tone.LEVEL_GROUND, Tone.EDGE, 1.8);
        pen.fill(slice(glass, 0, solid), Tone.LEVEL);
        if (hatched > solid) {
            Box lost = slice(glass, solid, hatched);
            pen.fill(lost, Tone.SAG_GROUND);
            pen.hatch(lost, Tone.SAG, 6, 1.8);
            double edge = lost.bottom();
            pen.line(glass.x(), edge, glass.right(), edge, Tone.SAG, 1.6);
        }
        if (pen.isCoarse()) {
            return;
        }
        double tick = glass.bottom() - cutoff * glass.height();
        pen.line(glass.x() - 6, tick, glass.x() + 5, tick, Tone.WRAP_INK, 2);
        pen.line(glass.right() - 5, tick, glass.right() + 6, tick, Tone.WRAP_INK, 2);
    }

    private static Box slice(Box glass, double from, double to) {
        return new Box(glass.x(), glass.bottom() - to * glass.height(), glass.width(), (to - from) * glass.height());
    }
}
