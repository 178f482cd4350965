package org.sagwise.hazard;

import java.util.List;

/**
 * That cells should not be used again once a hazard came true: shorted, charged backwards or beyond a limit, driven
 * below empty, heavily over their limit. Common practice, no source; the advice of the cautions says the same of each.
 *
 * @param atLeast how grave the hazard must be
 * @param which of its parts are past use
 */
record Spends(Signal atLeast, Which which) implements Bearing {

    /** Which of the parts of a caution are meant. */
    enum Which {
        EVERY_PART,
        FIRST_PART,
        /** Those that stand the wrong way round, which come first. */
        TURNED_PARTS
    }

    static Spends spends(Signal atLeast, Which which) {
        return new Spends(atLeast, which);
    }

    /** Names of the parts past use; some of them may be no cells. */
    List<String> parts(Caution caution) {
        if (caution.signal().compareTo(atLeast) > 0) {
            return List.of();
        }
        return switch (which) {
            case EVERY_PART -> caution.parts();
            case FIRST_PART -> caution.parts().subList(0, 1);
            case TURNED_PARTS -> caution.parts().subList(0, caution.turned());
        };
    }
}
