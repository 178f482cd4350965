package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.sagwise.reading.Notice;

/**
 * Part of the bench has no answer in ideal parts, or parts that control themselves come to no rest:
 * a finding in words instead of numbers. A shorted ideal source is left to {@link PackShorted}.
 *
 * @param kind what kept it from being computed
 * @param signal how grave that is
 */
record NoAnswer(Notice.Kind kind, Signal signal) implements HazardRule {

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        Set<Notice> seen = new HashSet<>();
        for (SwitchView view : context.views()) {
            for (Notice notice : view.readings().notices()) {
                if (notice.kind() == kind && seen.add(notice)) {
                    found.add(new CautionBuilder(context, signal)
                            .when(view.when())
                            .parts(notice.parts()));
                }
            }
        }
        return found;
    }
}
