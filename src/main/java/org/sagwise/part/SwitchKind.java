package org.sagwise.part;

import static org.sagwise.part.KeyBounds.MODEL;
import static org.sagwise.part.KeyBounds.MOST_MOHM;
import static org.sagwise.part.key.KeySpec.choice;
import static org.sagwise.part.key.KeySpec.choiceElse;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;

import org.sagwise.part.key.KeyTable;

/** The button that lets the current through, or the transistor that it steers. */
final class SwitchKind {

    /** Resistance typical of a thumb button's contacts, mΩ: typical, from memory. */
    private static final double CLOSED_MOHM = 3;

    private static final KeyTable KEYS = KeyTable.of(
            MODEL,
            optional("closed_mohm", from(0, MOST_MOHM, CLOSED_MOHM)),
            optional("type", choiceElse("button", "button", "mosfet")),
            optional("stuck", choice("open", "closed")).ofPiece());

    static final KindDescriptor DESCRIPTOR = KindDescriptor.of(Role.IN_LINE, Ends.ALIKE, KEYS, "1", "2")
            .inCatalogue("switches", "type", "closed_mohm")
            .called("fire");

    private SwitchKind() {}
}
