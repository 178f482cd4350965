package org.sagwise.hazard;

import java.util.List;
import java.util.Map;

/**
 * A finding of a hazard rule about the drawn circuit. Texts are made from it by {@link
 * CautionTexts} in the reader's language.
 *
 * @param id which hazard, as in {@code cell-over-limit}: the key of its texts
 * @param signal how grave
 * @param parts ids of the parts concerned, the one to look at first
 * @param links places of the links concerned
 * @param when in which position of the button it shows
 * @param measured the number found, in {@code unit}; NaN where no number belongs to it
 * @param limit the number it is held against, in {@code unit}; NaN where none belongs to it
 * @param unit symbol of the unit of both, as in {@code A}; empty without numbers
 * @param details further values that its texts name, by the name used there: numbers in SI units or
 *     the unit the name ends in, texts, part names
 */
public record Caution(
        String id,
        Signal signal,
        List<String> parts,
        List<Integer> links,
        When when,
        double measured,
        double limit,
        String unit,
        Map<String, Object> details) {

    public Caution {
        parts = List.copyOf(parts);
        links = List.copyOf(links);
        details = Map.copyOf(details);
    }

    /** Whether its current is one of a moment at best: in a real cell so much breaks down within seconds. */
    public boolean isOfAMoment() {
        return details.containsKey(CautionBuilder.OF_A_MOMENT);
    }

    /** How many cells stand the wrong way round, which come first among its parts; 1 where it names none. */
    public int turned() {
        return details.get("turned") instanceof List<?> names ? names.size() : 1;
    }

    /** In which position of the button a hazard shows. */
    public enum When {
        /** With the button let go: it is there as soon as the last joint is made. */
        AT_REST,
        /** Only while the button is held. */
        FIRED,
        /** Whatever the button does; about what lies on the bench. */
        ALWAYS
    }
}
