package org.sagwise.part;

import static org.sagwise.part.KeyBounds.MOST_OHM;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.required;

import org.sagwise.part.key.KeyTable;

/** A resistor that nothing changes. */
final class ResistorKind {

    private static final KeyTable KEYS = KeyTable.of(required("ohm", from(0, MOST_OHM)));

    static final KindDescriptor DESCRIPTOR = KindDescriptor.of(Role.LOAD, Ends.ALIKE, KEYS, "1", "2")
            .fresh("ohm", 1)
            .ratedBy("ohm");

    private ResistorKind() {}
}
