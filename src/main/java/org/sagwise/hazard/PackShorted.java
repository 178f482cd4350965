package org.sagwise.hazard;

import java.util.List;
import org.sagwise.caution.circuit.Conflict;

/**
 * Metal alone joins plus and minus of a cell or of a row of cells, with no load in the way. DANGER
 * where the current is over a cell's limit.
 */
final class PackShorted implements HazardRule {

    static final String ID = "pack-shorted";

    /** Least current that is called a short, A: a joint of more than some 40 Ω is only a leak. */
    static final double LEAST_A = 0.1;

    @Override
    public List<Caution> check(HazardContext context) {
        return ConflictCurrent.all(context, Conflict.Kind.SHORTED).stream()
                .filter(current -> !(current.currentA() < LEAST_A))
                .map(current -> current.caution(context, ID)
                        .parts(current.busiest())
                        .parts(current.members())
                        .variant(Double.isNaN(current.limitA()) ? "supply" : "metal")
                        .build())
                .toList();
    }
}
