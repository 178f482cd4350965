package org.sagwise.caution;

import java.util.List;

/** The wrap of a cell is torn, though its can touches nothing yet. */
final class TornWrap implements HazardRule {
    static final String ID = "torn-wrap";

    @Override
    public List<Caution> check(Evidence evidence) {
        List<String> torn = evidence.torn();
        return torn.isEmpty()
                ? List.of()
                : List.of(new CautionBuilder(evidence, ID, Signal.CAUTION)
                        .parts(torn)
                        .build());
    }
}
