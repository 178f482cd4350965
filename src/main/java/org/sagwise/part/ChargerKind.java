package org.sagwise.part;

import static org.sagwise.part.KeyBounds.LEAST_A;
import static org.sagwise.part.KeyBounds.LEAST_V;
import static org.sagwise.part.KeyBounds.MODEL;
import static org.sagwise.part.KeyBounds.MOST_A;
import static org.sagwise.part.KeyBounds.MOST_V;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;

import java.util.OptionalDouble;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeyTable;

/** A charger. */
final class ChargerKind {

    private static final double USUAL_LIMIT_V = 4.20;

    /** Share of the charging current at which a charger usually stops: common practice, no source. */
    private static final double USUAL_TAPER = 0.1;

    private static final KeyTable KEYS = KeyTable.of(
                    MODEL,
                    optional("current_A", from(LEAST_A, MOST_A)),
                    optional("limit_V", from(LEAST_V, MOST_V, USUAL_LIMIT_V)),
                    optional("taper_A", from(0, MOST_A))
                            .usually(charger -> charger.isSaid("current_A")
                                    ? OptionalDouble.of(charger.need("current_A") * USUAL_TAPER)
                                    : OptionalDouble.empty()))
            .with(KeyRule.modelOr("current_A"), new KeyRule.OrderedInCatalogue("taper_A", "current_A"));

    static final KindDescriptor DESCRIPTOR = KindDescriptor.of(Role.SOURCE, Ends.DIFFERENT, KEYS, "+", "-")
            .inCatalogue("chargers", "current_A", "limit_V", "taper_A")
            .computedBy((values, catalogue) -> ChargerSpec.of(values));

    private ChargerKind() {}
}
