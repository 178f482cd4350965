package org.sagwise.part;

import static org.sagwise.part.key.KeySpec.optional;

import org.sagwise.part.key.KeySpec;

/**
 * Ends of ranges that several kinds share, far beyond anything that makes sense on a bench: they
 * catch slips of the decimal point and of the unit, not unusual parts.
 */
final class KeyBounds {

    /**
     * Least currents, powers and voltages of anything that carries a heating current. Ranges that
     * begin above nothing end in numbers that the next multiplication rounds to nothing.
     */
    static final double LEAST_A = 0.001;

    static final double LEAST_W = 0.001;
    static final double LEAST_V = 0.001;

    /** A thinner wire breaks when it is looked at; the thinnest gauge has 0.025 mm. */
    static final double LEAST_WIRE_MM = 0.001;

    static final double MOST_MOHM = 1e9;
    static final double MOST_OHM = 1e12;
    static final double MOST_A = 10_000;
    static final double MOST_V = 1_000;
    static final double MOST_W = 1e6;

    /** Which model a part is of. */
    static final KeySpec MODEL = optional(KindDescriptor.MODEL_KEY, new KeySpec.CatalogueType(KeySpec.Shelf.MODEL))
            .ofPiece();

    private KeyBounds() {}
}
