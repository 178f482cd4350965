package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.circuit.Conflict;

/**
 * Metal alone joins plus and minus of a cell or of a row of cells, with no load in the way. DANGER
 * where the current is over a cell's limit.
 */
final class PackShorted implements HazardRule {

    /** Least current that is called a short, A: a joint of more than some 40 Ω is only a leak. */
    static final double LEAST_A = 0.1;

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        for (ConflictCurrent current : context.conflicts(Conflict.Kind.SHORTED)) {
            if (!(current.currentA() < LEAST_A)) {
                found.add(current.caution(context)
                        .parts(current.busiest())
                        .parts(current.members())
                        .variant(Double.isNaN(current.limitA()) ? "supply" : "metal"));
            }
        }
        found.addAll(LoadShorts.in(context));
        return found;
    }
}
