package org.sagwise.caution;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.part.FuseSpec;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.PartKind;

/**
 * A fuse carries more than it bears in the long run, {@link FuseSpec#LEAST_MELTING_RATIO} times its
 * rating: it will melt and the circuit will be dead.
 */
final class FuseWillOpen implements HazardRule {
    static final String ID = "fuse-will-open";

    @Override
    public List<Caution> check(Evidence evidence) {
        List<Caution> found = new ArrayList<>();
        for (Part fuse : evidence.bench().scenario().partsOf(PartKind.FUSE)) {
            double ratingA = evidence.fuse(fuse.id()).ratingA();
            evidence.looks().stream()
                    .filter(look -> Math.abs(look.currentA(fuse.id())) > FuseSpec.LEAST_MELTING_RATIO * ratingA)
                    .findFirst()
                    .map(look -> new CautionBuilder(evidence, ID, Signal.NOTICE)
                            .when(look.when())
                            .parts(fuse.id())
                            .measured(Math.abs(look.currentA(fuse.id())), ratingA, "A")
                            .build())
                    .ifPresent(found::add);
        }
        return found;
    }
}
