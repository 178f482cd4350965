package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;

/**
 * A hazard that begins where a number of a part passes a limit, with the button let go or else
 * held.
 *
 * @param kind what kind of part
 * @param threshold the number and its limit
 * @param gravity how grave it is
 * @param words what else the texts name
 */
record PartThreshold(
        PartKind kind,
        Threshold<PartView> threshold,
        Function<PartView, Signal> gravity,
        BiConsumer<CautionBuilder, PartView> words)
        implements HazardRule {

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        for (Part part : context.partsOf(kind)) {
            for (SwitchView view : context.views()) {
                PartView one = new PartView(part, view.part(part.id()), context);
                if (threshold.isPassed(one)) {
                    CautionBuilder caution = new CautionBuilder(context, gravity.apply(one))
                            .when(view.when())
                            .parts(part.id());
                    words.accept(threshold.measured(caution, one), one);
                    found.add(caution);
                    break;
                }
            }
        }
        return found;
    }
}
