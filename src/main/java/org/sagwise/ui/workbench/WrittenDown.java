package org.sagwise.ui.workbench;

import java.util.EnumMap;
import java.util.Map;
import org.sagwise.plan.CheckStep;

/** Readings of the meter in the hand that were written down, as it showed them. */
public final class WrittenDown {

    private final Map<CheckStep, String> figures = new EnumMap<>(CheckStep.class);

    void put(CheckStep step, String figure) {
        figures.put(step, figure);
    }

    /** What was read last of each kind, with its unit. */
    public Map<CheckStep, String> figures() {
        return Map.copyOf(figures);
    }
}
