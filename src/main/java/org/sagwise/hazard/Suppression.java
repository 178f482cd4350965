package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Leaves out what only follows from something graver, as each hazard says by what it hides. */
final class Suppression {

    /** Holds what only a bench of several cautions asks for. */
    private static final class Order {

        /**
         * Hazards with something to hide, each after those that could hide it, so that what is left out
         * leaves nothing out; of two that can hide each other the one of lower rank is first.
         */
        private static final List<Hazard> HIDING = inOrder();
    }

    private final HazardContext context;
    private final Map<Caution, Set<Integer>> islands = new IdentityHashMap<>();

    Suppression(HazardContext context) {
        this.context = context;
    }

    private static List<Hazard> inOrder() {
        List<Hazard> open = new ArrayList<>(Hazards.ALL);
        List<Hazard> done = new ArrayList<>();
        while (!open.isEmpty()) {
            Hazard next = open.stream()
                    .filter(hazard -> open.stream().noneMatch(other -> other.canHide(hazard) && !hazard.canHide(other)))
                    .findFirst()
                    .orElseThrow();
            open.remove(next);
            done.add(next);
        }
        done.removeIf(hazard -> hazard.hides().isEmpty());
        return List.copyOf(done);
    }

    /** The cautions without those that follow from others among them, in the same order. */
    List<Caution> thin(List<Caution> cautions) {
        List<Caution> left = new ArrayList<>(cautions);
        if (left.size() < 2) {
            return left;
        }
        for (Hazard hazard : Order.HIDING) {
            for (Hides hides : hazard.hides()) {
                List<Caution> causes = left.stream()
                        .filter(caution -> caution.id().equals(hazard.id()) && hides.isCausedBy(caution))
                        .toList();
                left.removeIf(effect -> hides.concerns(effect)
                        && causes.stream().anyMatch(cause -> reaches(hides.reach(), cause, effect)));
            }
        }
        return left;
    }

    private boolean reaches(Hides.Reach reach, Caution cause, Caution effect) {
        return switch (reach) {
            case SAME_PARTS -> concernsSame(cause, effect);
            case SAME_PARTS_AND_MOMENT -> cause.when() == effect.when() && concernsSame(cause, effect);
            case SAME_ISLAND -> !Collections.disjoint(islands(cause), islands(effect));
        };
    }

    private static boolean concernsSame(Caution cause, Caution effect) {
        return !Collections.disjoint(cause.parts(), effect.parts())
                || !Collections.disjoint(cause.links(), effect.links());
    }

    private Set<Integer> islands(Caution caution) {
        return islands.computeIfAbsent(caution, key -> {
            Set<Integer> found = new HashSet<>();
            key.parts().forEach(part -> found.add(context.held().island(part)));
            found.remove(-1);
            return found;
        });
    }
}
