package org.sagwise.words;

import java.util.List;
import java.util.Optional;
import org.sagwise.part.PartKind;

/** Places of wires and joints in a circuit, by what they lead to; a meaning of the vocabulary each. */
final class WirePlace {

    /** From the plus of the pack to the first part. */
    static final String PLUS = "plus";

    /** Back to the minus of the pack. */
    static final String MINUS = "minus";

    /** From the coil back to the board. */
    static final String BACK = "back";

    static final String COIL = Clause.COIL.word();

    /** The whole pack: what a short lies across. */
    static final String PACK = "pack";

    static final List<String> ALL = List.of(
            PLUS,
            MINUS,
            BACK,
            COIL,
            Clause.BUTTON.word(),
            Clause.RESETTABLE.word(),
            Clause.FUSE.word(),
            Clause.GUARD.word(),
            Clause.BOARD.word(),
            Clause.CHARGER.word());

    private WirePlace() {}

    /** The place of a wire that leads to a part from the side of plus. */
    static Optional<String> before(PartKind kind) {
        return Clause.of(kind).map(Clause::word);
    }
}
