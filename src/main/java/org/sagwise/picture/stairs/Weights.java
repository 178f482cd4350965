package org.sagwise.picture.stairs;

import org.sagwise.reading.Staircase;

/** How wide steps are drawn against each other. Width has no meaning; it makes room for words. */
final class Weights {

    static final double BETWEEN_LANES = 0.25;
    static final double AROUND_LANES = 0.3;

    /** What joints one after the other get at most. */
    static final double MOST_JOINTS = 1.6;

    /** What a row of cells and all between them gets at most. */
    static final double MOST_IN_A_ROW = 22;

    private Weights() {}

    static double of(Staircase.Kind kind) {
        return switch (kind.sort()) {
            case SOURCE -> 1.1;
            case SAG -> 0.8;
            case JOINT -> kind == Staircase.Kind.CONTACT ? 0.3 : 0.4;
            case IN_LINE -> kind == Staircase.Kind.SWITCH ? 0.6 : 0.4;
            case GAP -> 0.6;
            case LOAD -> kind == Staircase.Kind.COIL ? 1.7 : 1.2;
        };
    }
}
