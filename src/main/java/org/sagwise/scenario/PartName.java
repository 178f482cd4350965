package org.sagwise.scenario;

import java.util.Locale;
import java.util.Optional;
import org.sagwise.part.PartKind;

/**
 * What a text calls a part: its label if it has one, else its kind and its id ({@code cell A}); an
 * id that begins with the kind stands alone.
 *
 * @param kind what the part is
 * @param id its id
 * @param label its label
 */
public record PartName(PartKind kind, String id, Optional<String> label) {

    public static PartName of(Part part) {
        return new PartName(part.kind(), part.id(), part.keys().text("label"));
    }

    /** The name of a part; of one that is not there its id stands for the name. */
    public static PartName of(Scenario scenario, String id) {
        return scenario.part(id)
                .map(PartName::of)
                .orElseGet(() -> new PartName(PartKind.RESISTOR, id, Optional.of(id)));
    }

    /** Whether its id is nothing but its kind. */
    boolean isPlain() {
        return label.isEmpty() && (id.equalsIgnoreCase(kind.word()) || id.equals(kind.idStem()));
    }

    /** The number at the end of an id as the bench gives them, {@code coil-2}; empty for any other name. */
    Optional<String> number() {
        String stem = kind.idStem() + "-";
        boolean numbered = label.isEmpty()
                && id.startsWith(stem)
                && id.length() > stem.length()
                && id.chars().skip(stem.length()).allMatch(Character::isDigit);
        return numbered ? Optional.of(id.substring(stem.length())) : Optional.empty();
    }

    /** Whether its id is one that the bench has given, and says only what kind of part it is and which. */
    public boolean isGiven() {
        return isPlain() || number().isPresent();
    }

    /** Whether a text should say its kind too. */
    boolean needsKind() {
        return label.isEmpty() && !id.toLowerCase(Locale.ROOT).startsWith(kind.word());
    }

    /** Label or id. */
    public String word() {
        return label.orElse(id);
    }
}
