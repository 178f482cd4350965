package org.sagwise.part;

import static org.sagwise.part.KeyBounds.LEAST_A;
import static org.sagwise.part.KeyBounds.MODEL;
import static org.sagwise.part.KeyBounds.MOST_A;
import static org.sagwise.part.KeyBounds.MOST_MOHM;
import static org.sagwise.part.key.KeySpec.choiceElse;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;

import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeyTable;

/** A transistor or a diode that lets current through in one direction only. */
final class ReverseGuardKind {

    private static final String TYPE = "type";
    private static final String DIODE = "diode";

    /** On-resistance of a small power transistor, mΩ: typical, from memory. */
    private static final double MOSFET_MOHM = 2;

    /** Resistance of a Schottky diode behind its drop, mΩ, and the drop, V: typical, from memory. */
    private static final double DIODE_MOHM = 5;

    private static final double DIODE_V = 0.4;

    /** Above the drop of any single diode: a stack of them is several parts. */
    private static final double MOST_DROP_V = 10;

    private static final KeyTable KEYS = KeyTable.of(
                    MODEL,
                    optional(TYPE, choiceElse("mosfet", "mosfet", DIODE)),
                    byType("mohm", from(0, MOST_MOHM), MOSFET_MOHM, DIODE_MOHM),
                    byType("drop_V", from(0, MOST_DROP_V), 0, DIODE_V),
                    optional("rating_A", from(LEAST_A, MOST_A)))
            .with(KeyRule.modelOr("rating_A"));

    static final KindDescriptor DESCRIPTOR = KindDescriptor.of(Role.IN_LINE, Ends.DIFFERENT, KEYS, "in", "out")
            .inCatalogue("reverse-guards", TYPE, "mohm", "drop_V", "rating_A")
            .ratedBy("rating_A")
            .computedBy((values, catalogue) -> ReverseGuardSpec.of(values));

    private ReverseGuardKind() {}

    private static KeySpec byType(String name, KeySpec.Type range, double mosfet, double diode) {
        return optional(name, range)
                .usually(guard -> OptionalDouble.of(isDiode(guard) ? diode : mosfet))
                .fallsWith(TYPE);
    }

    private static boolean isDiode(EffectiveKeys guard) {
        return guard.word(TYPE).equals(Optional.of(DIODE));
    }
}
