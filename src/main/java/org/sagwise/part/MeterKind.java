package org.sagwise.part;

import static org.sagwise.part.KeyBounds.MOST_MOHM;
import static org.sagwise.part.key.KeySpec.choiceElse;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;

import org.sagwise.part.key.KeyTable;

/** A multimeter that stays on the bench. */
final class MeterKind {

    private static final double USUAL_SHUNT_MOHM = 10;

    private static final KeyTable KEYS = KeyTable.of(
            optional(MeterMode.KEY, choiceElse(MeterMode.VOLTS.word(), MeterMode.words()))
                    .ofPiece(),
            optional("shunt_mohm", from(0, MOST_MOHM, USUAL_SHUNT_MOHM)));

    static final KindDescriptor DESCRIPTOR = KindDescriptor.of(Role.METER, Ends.DIFFERENT, KEYS, "red", "black")
            .fresh(MeterMode.KEY, MeterMode.VOLTS.word());

    private MeterKind() {}
}
