package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.reading.Notice;

/**
 * Part of the bench has no answer in ideal parts, or parts that control themselves come to no rest:
 * a finding in words instead of numbers. A shorted ideal source is left to {@link PackShorted}.
 */
final class NoAnswer implements HazardRule {

    static final String DISAGREE_ID = "sources-disagree";
    static final String UNSETTLED_ID = "no-steady-state";

    @Override
    public List<Caution> check(HazardContext context) {
        List<Caution> found = new ArrayList<>();
        Set<Notice> seen = new HashSet<>();
        for (SwitchView view : context.views()) {
            for (Notice notice : view.readings().notices()) {
                if (seen.add(notice)) {
                    caution(context, notice)
                            .map(c -> c.when(view.when()).parts(notice.parts()).build())
                            .ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private static Optional<CautionBuilder> caution(HazardContext context, Notice notice) {
        return switch (notice.kind()) {
            case IDEAL_SOURCES_DISAGREE -> Optional.of(new CautionBuilder(context, DISAGREE_ID, Signal.WARNING));
            case NO_STEADY_STATE -> Optional.of(new CautionBuilder(context, UNSETTLED_ID, Signal.NOTICE));
            case IDEAL_SOURCE_SHORTED -> Optional.empty();
        };
    }
}
