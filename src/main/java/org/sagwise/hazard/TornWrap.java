package org.sagwise.hazard;

import java.util.List;

/** The wrap of a cell is torn, though its can touches nothing yet. */
final class TornWrap implements HazardRule {
    static final String ID = "torn-wrap";

    @Override
    public List<Caution> check(HazardContext context) {
        List<String> torn = context.torn();
        return torn.isEmpty()
                ? List.of()
                : List.of(new CautionBuilder(context, ID, Signal.CAUTION)
                        .parts(torn)
                        .build());
    }
}
