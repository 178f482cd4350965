package org.sagwise.words;

import org.sagwise.part.Catalogue;
import org.sagwise.part.key.Keys;

/**
 * What a bench has where a line says nothing. Wires and contacts are such as do not govern what comes out; each one
 * taken is told.
 */
final class Usual {

    /** A paper clip and its two touches, Ω: from memory, no source at hand. */
    static final double SHORT_OHM = 0.01;

    /** The mandrel on which a coil is wound, mm: common practice, no source. */
    static final double INNER_MM = 3;

    /** Of the catalogue's thickest ready-made jumper. */
    static final int AWG = 14;

    /** Of the same. */
    static final double LENGTH_MM = 80;

    /** How soon the board of a protected cell opens, s, and what it adds, mΩ: the catalogue's first one. */
    static final double TRIP_S = 0.02;

    static final double GUARD_MOHM = 40;

    /** A charger's end for each cell in a row, V. */
    static final double CHARGED_V = 4.2;

    private static final String CONTACT = "sled-clip";
    private static final String POST = "plate";

    private Usual() {}

    /** A cell to what it touches, mΩ. */
    static double contactMohm(Catalogue catalogue) {
        return mohm(catalogue, CONTACT);
    }

    /** Two coils in one screw, mΩ. */
    static double postMohm(Catalogue catalogue) {
        return mohm(catalogue, POST);
    }

    private static double mohm(Catalogue catalogue, String contact) {
        return catalogue.contacts().find(contact).map(it -> it.ohm() * 1000).orElse(0.0);
    }

    /** A wire as said, with what it lacks to be one. */
    static Keys wire(Keys said) {
        Keys wire = said;
        if (!said.has("awg") && !said.has("diameter_mm") && !said.has("area_mm2")) {
            wire = Keys.of("awg", AWG);
            for (var entry : said.values().entrySet()) {
                wire = wire.with(entry.getKey(), entry.getValue());
            }
        }
        return wire.has("length_mm") ? wire : wire.with("length_mm", LENGTH_MM);
    }
}
