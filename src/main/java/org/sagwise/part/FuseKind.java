package org.sagwise.part;

import static org.sagwise.part.KeyBounds.LEAST_A;
import static org.sagwise.part.KeyBounds.MODEL;
import static org.sagwise.part.KeyBounds.MOST_A;
import static org.sagwise.part.KeyBounds.MOST_MOHM;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;

import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec.FlagType;
import org.sagwise.part.key.KeyTable;

/** A fuse that melts once. */
final class FuseKind {

    /** Resistance typical of a small blade or pellet fuse, mΩ: typical, from memory. */
    private static final double MOHM = 5;

    private static final KeyTable KEYS = KeyTable.of(
                    MODEL,
                    optional("rating_A", from(LEAST_A, MOST_A)),
                    optional("mohm", from(0, MOST_MOHM, MOHM)),
                    optional("i2t_A2s", from(1e-6, 1e9))
                            .usually(fuse -> fuse.isSaid("rating_A")
                                    ? OptionalDouble.of(FuseSpec.usualMeltingA2s(fuse.need("rating_A")))
                                    : OptionalDouble.empty()),
                    optional("blown", new FlagType(Optional.of(false))).ofPiece())
            .with(KeyRule.modelOr("rating_A"));

    static final KindDescriptor DESCRIPTOR = KindDescriptor.of(Role.IN_LINE, Ends.ALIKE, KEYS, "1", "2")
            .inCatalogue("fuses", "rating_A", "mohm", "i2t_A2s")
            .ratedBy("rating_A")
            .computedBy((values, catalogue) -> FuseSpec.of(values));

    private FuseKind() {}
}
