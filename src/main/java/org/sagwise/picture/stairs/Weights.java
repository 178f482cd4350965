package org.sagwise.picture.stairs;

import org.sagwise.reading.Staircase;

/** How wide steps are drawn against each other. Width has no meaning; it makes room for words. */
final class Weights {

    static final double BETWEEN_LANES = 0.25;
    static final double AROUND_LANES = 0.3;

    private Weights() {}

    static double of(Staircase.Kind kind) {
        return switch (kind) {
            case CELL, SUPPLY, CHARGER, BOARD -> 1.1;
            case SAG -> 0.8;
            case CONTACT -> 0.3;
            case WIRE, FUSE, METER -> 0.4;
            case SWITCH, GAP -> 0.6;
            case COIL -> 1.7;
            case RESISTOR -> 1.2;
        };
    }
}
