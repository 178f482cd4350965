package org.sagwise.hazard;

import java.util.Set;

/**
 * What only follows from a hazard and is left out beside it: a reversed pair is over its limit,
 * below its cut-off and much else besides, and a reader needs to be told to turn the cell.
 *
 * @param atLeast how grave the hazard must be
 * @param reach how close a consequence must lie to it
 * @param effects ids of hazards that follow
 */
record Hides(Signal atLeast, Reach reach, Set<String> effects) implements Bearing {

    /** How close a consequence must lie to its cause. */
    enum Reach {
        /** It concerns a part or a link that the cause concerns. */
        SAME_PARTS("on the same parts"),
        /** It concerns a part that the cause concerns, and shows in the same position. */
        SAME_PARTS_AND_MOMENT("on the same parts, in the same position of the button"),
        /** It concerns a part that is joined, however far off, to one that the cause concerns. */
        SAME_ISLAND("on whatever is joined to it");

        private final String words;

        Reach(String words) {
            this.words = words;
        }

        /** As docs/hazards.md says it. */
        String words() {
            return words;
        }
    }

    Hides {
        effects = Set.copyOf(effects);
    }

    static Hides parts(Signal atLeast, String... effects) {
        return new Hides(atLeast, Reach.SAME_PARTS, Set.of(effects));
    }

    static Hides moment(Signal atLeast, String... effects) {
        return new Hides(atLeast, Reach.SAME_PARTS_AND_MOMENT, Set.of(effects));
    }

    static Hides island(Signal atLeast, String... effects) {
        return new Hides(atLeast, Reach.SAME_ISLAND, Set.of(effects));
    }

    boolean isCausedBy(Caution cause) {
        return cause.signal().compareTo(atLeast) <= 0;
    }

    boolean concerns(Caution effect) {
        return effects.contains(effect.id());
    }
}
