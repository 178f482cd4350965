package org.sagwise.hazard;

import java.math.BigDecimal;
import java.util.List;
import org.sagwise.run.Basis;

/**
 * A kind of hazard: all that the program knows about it but its words, which stand under its id in
 * the bundle {@code cautions}.
 *
 * @param id its name in files, as in {@code cell-over-limit}
 * @param rank its place among hazards of the same gravity, the lowest first; what it hides is left
 *     out in this order too
 * @param listing its row in docs/hazards.md
 * @param rule how it is found at the first moment
 * @param bearings what it hides, what cures it, what it spoils
 */
record Hazard(String id, int rank, Listing listing, HazardRule rule, List<Bearing> bearings) {

    Hazard {
        bearings = List.copyOf(bearings);
    }

    /**
     * A row of docs/hazards.md, in English.
     *
     * @param signals signal words, with what each is for
     * @param begins from where on
     * @param source where that number comes from
     * @param says what a reader is told, in a few words
     */
    record Listing(String signals, String begins, String source, String says) {

        /** On what the number rests that begins it, by the words of its source up to the first semicolon. */
        Basis basis() {
            String first = source.replaceAll(";.*", "");
            if (first.contains("our choice")) {
                return Basis.TEACHING;
            }
            return first.matches(".*(from memory|no source|typical).*") ? Basis.TYPICAL : Basis.PUBLISHED;
        }

        /** A threshold of the code, as people write it: 1.5, 2, 0.1. */
        static String number(double value) {
            return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        }

        /** A share of the code in percent. */
        static String percent(double share) {
            return Math.round(share * 100) + " %";
        }
    }

    static Hazard of(String id, int rank, Listing listing, HazardRule rule, Bearing... bearings) {
        return new Hazard(id, rank, listing, rule, List.of(bearings));
    }

    /** What of a kind the row says, in its order. */
    <B extends Bearing> List<B> all(Class<B> kind) {
        return bearings.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** What only follows from it. */
    List<Hides> hides() {
        return all(Hides.class);
    }

    boolean canHide(Hazard other) {
        return hides().stream().anyMatch(effect -> effect.effects().contains(other.id));
    }

    List<Caution> check(HazardContext context) {
        List<CautionBuilder> found = rule.check(context);
        return found.isEmpty()
                ? List.of()
                : found.stream().map(caution -> caution.build(id)).toList();
    }
}
