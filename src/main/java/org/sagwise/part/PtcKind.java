package org.sagwise.part;

import static org.sagwise.part.KeyBounds.MODEL;
import static org.sagwise.part.KeyBounds.MOST_V;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec.Usual;
import org.sagwise.part.key.KeyTable;

/** A fuse of polymer that trips when it gets warm, and comes back when it has cooled. */
final class PtcKind {

    private static final double LEAST_HOLD_A = 0.01;
    private static final double MOST_HOLD_A = 1_000;
    private static final double LEAST_MOHM = 0.001;
    private static final double MOST_MOHM = 1e8;

    private static final KeyTable KEYS = KeyTable.of(
                    MODEL,
                    optional("hold_A", from(LEAST_HOLD_A, MOST_HOLD_A)),
                    optional("trip_A", from(LEAST_HOLD_A, 10 * MOST_HOLD_A))
                            .fallsWith("hold_A")
                            .usually(byHold(holdA -> PtcSpec.USUAL_TRIP_RATIO * holdA)),
                    optional("mohm", from(LEAST_MOHM, MOST_MOHM))
                            .fallsWith("hold_A")
                            .usually(byHold(holdA -> 1000 * PtcSpec.USUAL_W / (holdA * holdA))),
                    optional("trip_s", from(0.01, 3600))
                            .fallsWith("hold_A")
                            .usually(byHold(holdA -> PtcSpec.USUAL_S_PER_A * holdA)),
                    optional("max_V", from(0.1, MOST_V)))
            .with(new KeyRule.Ordered("hold_A", "trip_A"), KeyRule.modelOr("hold_A"));

    static final KindDescriptor DESCRIPTOR = KindDescriptor.of(Role.IN_LINE, Ends.ALIKE, KEYS, "1", "2")
            .inCatalogue("ptcs", "hold_A", "trip_A", "mohm", "trip_s", "max_V")
            .ratedBy("hold_A")
            .computedBy((values, catalogue) -> PtcSpec.of(values));

    private PtcKind() {}

    private static Usual byHold(DoubleUnaryOperator of) {
        return ptc -> hold(ptc).isPresent()
                ? OptionalDouble.of(of.applyAsDouble(hold(ptc).getAsDouble()))
                : OptionalDouble.empty();
    }

    private static OptionalDouble hold(EffectiveKeys ptc) {
        return ptc.number("hold_A");
    }
}
