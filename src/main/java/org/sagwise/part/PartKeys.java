package org.sagwise.part;

import static org.sagwise.part.key.KeySpec.FOREIGN;
import static org.sagwise.part.key.KeySpec.above;
import static org.sagwise.part.key.KeySpec.choice;
import static org.sagwise.part.key.KeySpec.choiceElse;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;
import static org.sagwise.part.key.KeySpec.required;
import static org.sagwise.part.key.KeySpec.whole;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeySpec.CatalogueType;
import org.sagwise.part.key.KeySpec.FlagType;
import org.sagwise.part.key.KeySpec.GroupType;
import org.sagwise.part.key.KeySpec.Shelf;

/**
 * The keys of every kind of part in a scenario file: names, units (by ending), ranges, defaults.
 *
 * <p>The upper ends of ranges are far beyond anything that makes sense on a bench; they catch slips
 * of the decimal point and of the unit, not unusual parts.
 */
final class PartKeys {

    /** Resistance typical of a thumb button's contacts, mΩ: typical, from memory. */
    static final double SWITCH_CLOSED_MOHM = 3;

    /** Resistance typical of a small blade or pellet fuse, mΩ: typical, from memory. */
    static final double FUSE_MOHM = 5;

    private static final double MOST_MOHM = 1e9;

    /** A cell of next to no capacity is empty within a step of any run. */
    private static final double LEAST_MAH = 0.01;

    private static final double LEAST_HEALTH = 0.001;
    private static final double MOST_OHM = 1e12;
    private static final double MOST_A = 10_000;
    private static final double MOST_V = 1_000;

    private static final KeySpec MODEL = optional("model", new CatalogueType(Shelf.MODEL));

    private static final List<KeySpec> CELL = List.of(
            MODEL,
            optional("chemistry", choiceElse("INR", "ICR", "IMR", "INR", "NCR", "IFR")),
            optional("format", choiceElse("18650", "18350", "18650", "20700", "21700", "26650")),
            optional("charge", from(0, 1)),
            optional("rest_V", from(-1, 6)),
            optional("internal_mohm", from(0, 100_000)),
            optional("capacity_mAh", from(LEAST_MAH, 1_000_000)),
            optional("limit_A", above(0, MOST_A)),
            optional("temperature_C", from(-60, 1_000)),
            optional("health", from(LEAST_HEALTH, 1, 1)),
            optional("wrap", choiceElse("sound", "sound", "torn")),
            optional("polarisation_V", from(-5, 5, 0)),
            optional("pulse_A", above(0, MOST_A)),
            optional("pulse_s", above(0, 3_600)),
            optional("charge_limit_A", above(0, MOST_A)),
            optional("cutoff_V", from(0, 6)),
            optional("full_V", above(0, 6)),
            optional(
                    "guard",
                    new GroupType(List.of(
                            required("trip_A", above(0, MOST_A)),
                            required("trip_s", from(0, 3_600)),
                            required("mohm", from(0, 100_000)),
                            FOREIGN))),
            optional("claimed_A", above(0, MOST_A)),
            optional("claimed_mAh", above(0, 1_000_000)));

    private static final List<KeySpec> COIL = List.of(
            optional("ohm", above(0, 1e6)),
            optional(
                    "wire",
                    new GroupType(List.of(
                            required("alloy", new CatalogueType(Shelf.ALLOY)),
                            optional("awg", whole(0, 50)),
                            optional("diameter_mm", above(0, 20)),
                            required("wraps", above(0, 1_000)),
                            required("inner_mm", above(0, 100)),
                            optional("legs_mm", from(0, 1_000, 0)),
                            optional("strands", whole(1, 1_000)),
                            FOREIGN))),
            optional("limit_W", above(0, 1e6)));

    private static final Map<PartKind, List<KeySpec>> TABLE = new EnumMap<>(PartKind.class);

    static {
        TABLE.put(PartKind.CELL, CELL);
        TABLE.put(PartKind.COIL, COIL);
        TABLE.put(
                PartKind.SWITCH,
                List.of(
                        optional("closed_mohm", from(0, MOST_MOHM, SWITCH_CLOSED_MOHM)),
                        optional("type", choiceElse("button", "button", "mosfet")),
                        optional("stuck", choice("open", "closed"))));
        TABLE.put(
                PartKind.FUSE,
                List.of(
                        MODEL,
                        optional("rating_A", above(0, MOST_A)),
                        optional("mohm", from(0, MOST_MOHM, FUSE_MOHM)),
                        optional("i2t_A2s", above(0, 1e9)),
                        optional("blown", new FlagType(Optional.of(false)))));
        TABLE.put(
                PartKind.BOARD,
                List.of(
                        MODEL,
                        optional("power_W", above(0, 1e6)),
                        optional(
                                "efficiency",
                                new KeySpec.NumberType(
                                        0, 1, KeySpec.Bound.EXCLUDED, KeySpec.Grain.ANY, Optional.of(0.92))),
                        optional("cutoff_V", from(0, MOST_V)),
                        optional("max_input_A", above(0, MOST_A)),
                        optional("out_min_V", from(0, MOST_V)),
                        optional("out_max_V", above(0, MOST_V))));
        TABLE.put(
                PartKind.CHARGER,
                List.of(
                        MODEL,
                        optional("current_A", above(0, MOST_A)),
                        optional(
                                "limit_V",
                                new KeySpec.NumberType(
                                        0, MOST_V, KeySpec.Bound.EXCLUDED, KeySpec.Grain.ANY, Optional.of(4.20))),
                        optional("taper_A", from(0, MOST_A))));
        TABLE.put(
                PartKind.SUPPLY,
                List.of(required("volts", from(-MOST_V, MOST_V)), optional("internal_ohm", from(0, MOST_OHM, 0.01))));
        TABLE.put(PartKind.RESISTOR, List.of(required("ohm", from(0, MOST_OHM))));
        TABLE.put(
                PartKind.METER,
                List.of(
                        optional(MeterMode.KEY, choiceElse("volts", MeterMode.words())),
                        optional("shunt_mohm", from(0, MOST_MOHM, 10))));
    }

    private PartKeys() {}

    static List<KeySpec> of(PartKind kind) {
        return TABLE.get(kind);
    }
}
