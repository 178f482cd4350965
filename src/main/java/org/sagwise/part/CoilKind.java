package org.sagwise.part;

import static org.sagwise.part.KeyBounds.LEAST_W;
import static org.sagwise.part.KeyBounds.LEAST_WIRE_MM;
import static org.sagwise.part.KeyBounds.MODEL;
import static org.sagwise.part.KeyBounds.MOST_W;
import static org.sagwise.part.key.KeySpec.above;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.group;
import static org.sagwise.part.key.KeySpec.optional;
import static org.sagwise.part.key.KeySpec.required;
import static org.sagwise.part.key.KeySpec.whole;

import java.util.List;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec.CatalogueType;
import org.sagwise.part.key.KeySpec.Shelf;
import org.sagwise.part.key.KeyTable;

/** A heating coil: of so many ohms, or wound of a wire. */
final class CoilKind {

    private static final KeyTable KEYS = KeyTable.of(
                    MODEL,
                    optional("ohm", above(0, 1e6)),
                    optional(
                            "wire",
                            group(
                                    List.of(KeyRule.exactlyOne("awg", "diameter_mm")),
                                    required("alloy", new CatalogueType(Shelf.ALLOY)),
                                    optional("awg", whole(0, 50)),
                                    optional("diameter_mm", from(LEAST_WIRE_MM, 20)),
                                    required("wraps", from(0.01, 1_000)),
                                    required("inner_mm", from(0.01, 100)),
                                    optional("legs_mm", from(0, 1_000, 0)),
                                    optional("strands", whole(1, 1_000, 1)))),
                    optional("limit_W", from(LEAST_W, MOST_W)))
            .with(KeyRule.oneOrModel("ohm", "wire"));

    static final KindDescriptor DESCRIPTOR = KindDescriptor.of(Role.LOAD, Ends.ALIKE, KEYS, "1", "2")
            .inCatalogue("coils")
            .computedBy((values, catalogue) -> CoilSpec.of(values, catalogue.alloys()));

    private CoilKind() {}
}
