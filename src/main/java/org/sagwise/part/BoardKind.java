package org.sagwise.part;

import static org.sagwise.part.KeyBounds.LEAST_A;
import static org.sagwise.part.KeyBounds.LEAST_V;
import static org.sagwise.part.KeyBounds.LEAST_W;
import static org.sagwise.part.KeyBounds.MODEL;
import static org.sagwise.part.KeyBounds.MOST_A;
import static org.sagwise.part.KeyBounds.MOST_V;
import static org.sagwise.part.KeyBounds.MOST_W;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;

import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeyTable;

/** A regulated board. A limit that nobody gives does not bind. */
final class BoardKind {

    private static final double USUAL_EFFICIENCY = 0.92;

    private static final KeyTable KEYS = KeyTable.of(
                    MODEL,
                    optional("power_W", from(LEAST_W, MOST_W)),
                    optional("efficiency", from(0.01, 1, USUAL_EFFICIENCY)),
                    optional("cutoff_V", from(0, MOST_V)),
                    optional("max_input_A", from(LEAST_A, MOST_A)),
                    optional("out_min_V", from(0, MOST_V)),
                    optional("out_max_V", from(LEAST_V, MOST_V)))
            .with(KeyRule.modelOr("power_W"), new KeyRule.Ordered("out_min_V", "out_max_V"));

    static final KindDescriptor DESCRIPTOR = KindDescriptor.of(
                    Role.CONVERTER, Ends.DIFFERENT, KEYS, "in+", "in-", "out+", "out-")
            .inCatalogue("boards", "power_W", "efficiency", "cutoff_V", "max_input_A", "out_min_V", "out_max_V")
            .computedBy((values, catalogue) -> BoardSpec.of(values));

    private BoardKind() {}
}
