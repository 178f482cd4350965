package org.sagwise.part;

import static org.sagwise.part.KeyBounds.MOST_OHM;
import static org.sagwise.part.KeyBounds.MOST_V;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;
import static org.sagwise.part.key.KeySpec.required;

import org.sagwise.part.key.KeyTable;

/** A bench supply: volts behind a resistance. */
final class SupplyKind {

    private static final double USUAL_OHM = 0.01;

    private static final KeyTable KEYS = KeyTable.of(
            required("volts", from(-MOST_V, MOST_V)), optional("internal_ohm", from(0, MOST_OHM, USUAL_OHM)));

    static final KindDescriptor DESCRIPTOR =
            KindDescriptor.of(Role.SOURCE, Ends.DIFFERENT, KEYS, "+", "-").fresh("volts", 4.2);

    private SupplyKind() {}
}
