package org.sagwise.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Unit;

/**
 * What a clause can be about: the word that opens it, and which amount and which word mean which key there. Reading and
 * writing both go by this table; the words themselves stand in the bundle {@code trade-words}.
 */
enum Clause {
    CELLS(
            "cells",
            PartKind.CELL,
            List.of(
                    plain(Unit.AMPERE_HOUR, "capacity_mAh"),
                    plain(Unit.AMPERE, "limit_A"),
                    plain(Unit.OHM, "internal_mohm"),
                    plain(Unit.VOLT, "rest_V"),
                    plain(Unit.FRACTION, "charge"),
                    plain(Unit.CELSIUS, "temperature_C"),
                    with("worn", Unit.FRACTION, "health"),
                    with("limit", Unit.AMPERE, "limit_A"),
                    with("label", Unit.AMPERE, "claimed_A"),
                    with("label", Unit.AMPERE_HOUR, "claimed_mAh"),
                    with("pulse", Unit.AMPERE, "pulse_A"),
                    with("pulse", Unit.SECOND, "pulse_s"),
                    with("charging", Unit.AMPERE, "charge_limit_A"),
                    with("cutoff", Unit.VOLT, "cutoff_V"),
                    with("protected", Unit.AMPERE, "guard.trip_A"),
                    with("protected", Unit.SECOND, "guard.trip_s"),
                    with("protected", Unit.OHM, "guard.mohm")),
            List.of(
                    new Flag("full", "charge", 1.0),
                    new Flag("empty", "charge", 0.0),
                    new Flag("worn", "health", Worn.CELL),
                    new Flag("torn", "wrap", "torn"),
                    new Flag("moving-air", "cooling", "moving-air"),
                    new Flag("sled", "cooling", "sled"),
                    new Flag("tube", "cooling", "tube"))),
    COIL(
            "coil",
            PartKind.COIL,
            List.of(
                    plain(Unit.OHM, "ohm"),
                    bare("", "ohm"),
                    plain(Unit.WATT, "limit_W"),
                    bare("awg", "wire.awg"),
                    bare("wraps", "wire.wraps"),
                    with("inner", Unit.METRE, "wire.inner_mm"),
                    plain(Unit.METRE, "wire.inner_mm"),
                    with("legs", Unit.METRE, "wire.legs_mm"),
                    with("thick", Unit.METRE, "wire.diameter_mm"),
                    bare("strands", "wire.strands")),
            List.of()),
    BUTTON(
            "button",
            PartKind.SWITCH,
            List.of(plain(Unit.OHM, "closed_mohm")),
            List.of(
                    new Flag("worn", "closed_mohm", Worn.BUTTON_MOHM),
                    new Flag("transistor", "type", "mosfet"),
                    new Flag("stuck-closed", "stuck", "closed"),
                    new Flag("stuck-open", "stuck", "open"))),
    FUSE(
            "fuse",
            PartKind.FUSE,
            List.of(
                    plain(Unit.AMPERE, "rating_A"),
                    plain(Unit.OHM, "mohm"),
                    plain(Unit.AMPERE_SQUARED_SECOND, "i2t_A2s")),
            List.of(new Flag("blown", "blown", true))),
    RESETTABLE(
            "resettable",
            PartKind.PTC,
            List.of(
                    plain(Unit.AMPERE, "hold_A"),
                    with("trips", Unit.AMPERE, "trip_A"),
                    plain(Unit.OHM, "mohm"),
                    plain(Unit.SECOND, "trip_s"),
                    plain(Unit.VOLT, "max_V")),
            List.of()),
    GUARD(
            "guard",
            PartKind.REVERSE_GUARD,
            List.of(plain(Unit.AMPERE, "rating_A"), plain(Unit.OHM, "mohm"), plain(Unit.VOLT, "drop_V")),
            List.of(new Flag("diode", "type", "diode"))),
    BOARD(
            "board",
            PartKind.BOARD,
            List.of(
                    plain(Unit.WATT, "power_W"),
                    plain(Unit.FRACTION, "efficiency"),
                    plain(Unit.VOLT, "cutoff_V"),
                    with("cutoff", Unit.VOLT, "cutoff_V"),
                    with("gives", Unit.VOLT, "out_max_V"),
                    with("at-least", Unit.VOLT, "out_min_V"),
                    plain(Unit.AMPERE, "max_input_A")),
            List.of()),
    CHARGER(
            "charger",
            PartKind.CHARGER,
            List.of(
                    plain(Unit.AMPERE, "current_A"),
                    plain(Unit.VOLT, "limit_V"),
                    with("taper", Unit.AMPERE, "taper_A")),
            List.of()),
    WIRE(
            "wire",
            null,
            List.of(
                    bare("awg", "awg"),
                    plain(Unit.SQUARE_METRE, "area_mm2"),
                    with("thick", Unit.METRE, "diameter_mm"),
                    plain(Unit.METRE, "length_mm"),
                    plain(Unit.OHM, "contacts_mohm")),
            List.of()),
    CONTACTS("contacts", null, List.of(plain(Unit.OHM, "contact_mohm")), List.of()),
    JOINT("joint", null, List.of(plain(Unit.OHM, "contact_mohm")), List.of()),
    SHORT("short", null, List.of(plain(Unit.OHM, "ohm"), bare("", "ohm")), List.of()),
    AMBIENT("ambient", null, List.of(plain(Unit.CELSIUS, "ambient_C")), List.of()),
    HELD("held", null, List.of(), List.of()),
    IDEAL("ideal", null, List.of(), List.of());

    /** Before the name of an entry of the catalogue, of what is said by a phrase: {@code model.ID}. */
    static final String MODEL = "model.";

    static final String ALLOY = "alloy.";
    static final String CONTACT = "contact.";

    /** What is meant by worn where nobody says a number. */
    static final class Worn {

        /** Health of a cell: chosen for a round sum. */
        static final double CELL = 0.8;

        /** Contacts of a button, mΩ: the catalogue's, from memory. */
        static final double BUTTON_MOHM = 20;

        private Worn() {}
    }

    private final String word;
    private final PartKind kind;
    private final List<Term> terms;
    private final List<Flag> flags;

    Clause(String word, PartKind kind, List<Term> terms, List<Flag> flags) {
        this.word = word;
        this.kind = kind;
        this.terms = terms;
        this.flags = flags;
    }

    /**
     * Which amount means which key.
     *
     * @param word what stands with it; empty where the amount says it alone
     * @param unit in what it is measured; empty for a bare number
     * @param key the key, with its group before a point
     */
    record Term(String word, Optional<Unit> unit, String key) {

        /** The number that stands under the key for an amount in its unit. */
        double keyed(double value) {
            return unit.isEmpty()
                    ? value
                    : measure(key)
                            .map(measure -> measure.scale().fromUnit(value))
                            .orElse(value);
        }
    }

    /** A word that means a key by itself. */
    record Flag(String word, String key, Object value) {}

    private static Term plain(Unit unit, String key) {
        return new Term("", Optional.of(unit), key);
    }

    private static Term with(String word, Unit unit, String key) {
        return new Term(word, Optional.of(unit), key);
    }

    private static Term bare(String word, String key) {
        return new Term(word, Optional.empty(), key);
    }

    /** The meaning that opens such a clause. */
    String word() {
        return word;
    }

    /** The kind of part that it is about, if it is about one. */
    Optional<PartKind> kind() {
        return Optional.ofNullable(kind);
    }

    List<Term> terms() {
        return terms;
    }

    List<Flag> flags() {
        return flags;
    }

    /** The clause about parts of a kind. */
    static Optional<Clause> of(PartKind kind) {
        return Stream.of(values()).filter(clause -> clause.kind == kind).findFirst();
    }

    /** In what the number under a key is; empty where the key does not say. */
    static Optional<Measure> measure(String path) {
        return Measure.ofKey(path.substring(path.indexOf('.') + 1));
    }

    /** These keys with one set, which may stand in a group. */
    static Keys put(Keys keys, String path, Object value) {
        int point = path.indexOf('.');
        if (point < 0) {
            return keys.with(path, value);
        }
        Keys group = keys.group(path.substring(0, point)).orElse(Keys.NONE);
        return keys.with(path.substring(0, point), group.with(path.substring(point + 1), value));
    }
}
