package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;

/**
 * A fuse carries more than it bears in the long run, {@link FuseSpec#LEAST_MELTING_RATIO} times its
 * rating: it will melt and the circuit will be dead.
 */
final class FuseWillOpen implements HazardRule {
    static final String ID = "fuse-will-open";

    @Override
    public List<Caution> check(HazardContext context) {
        List<Caution> found = new ArrayList<>();
        for (Part fuse : context.bench().scenario().partsOf(PartKind.FUSE)) {
            double ratingA = context.fuse(fuse.id()).ratingA();
            context.views().stream()
                    .filter(view -> Math.abs(view.currentA(fuse.id())) > FuseSpec.LEAST_MELTING_RATIO * ratingA)
                    .findFirst()
                    .map(view -> new CautionBuilder(context, ID, Signal.NOTICE)
                            .when(view.when())
                            .parts(fuse.id())
                            .measured(Math.abs(view.currentA(fuse.id())), ratingA, "A")
                            .build())
                    .ifPresent(found::add);
        }
        return found;
    }
}
