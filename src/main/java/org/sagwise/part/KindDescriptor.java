package org.sagwise.part;

import java.util.List;
import java.util.Optional;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeyTable;
import org.sagwise.part.key.Keys;

/**
 * Everything that a kind of part is, besides what it looks like and how it computes.
 *
 * @param terminals in the order in which currents and volts are counted: first the one from which
 *     current through the part is counted
 * @param keys what it may say, besides {@code id}, {@code kind}, {@code label}
 * @param role what it is for in a circuit
 * @param ends whether it matters which way round it lies
 * @param family where the catalogue keeps models or ready-made ones; empty for bench gear that is
 *     all the same
 * @param fresh what one from the shelf says at first, besides its model
 * @param idStem what ids of such parts begin with, where that is not the word for the kind; or
 *     {@link #LETTER}
 * @param ratedBy the key whose value stands beside it in pictures
 * @param spec what its values mean in SI units, for kinds that compute with more than a key or two
 */
public record KindDescriptor(
        List<String> terminals,
        KeyTable keys,
        Role role,
        Ends ends,
        Optional<Family> family,
        Keys fresh,
        Optional<String> idStem,
        Optional<String> ratedBy,
        Optional<SpecMaker> spec) {

    /**
     * A family of the catalogue.
     *
     * @param word its name on the command line; the file is {@code word.json}
     * @param needs keys that every entry says
     */
    public record Family(String word, List<String> needs) {

        /** The file of its entries. */
        public String file() {
            return word + ".json";
        }
    }

    /** Makes of values what computes: a {@link CellSpec}, a {@link FuseSpec}. */
    @FunctionalInterface
    public interface SpecMaker {

        /**
         * @throws IllegalArgumentException if a value is missing or makes no sense, which the rules
         *     of the scenario or of the catalogue find first
         */
        Object make(EffectiveKeys values, Catalogue catalogue);
    }

    static KindDescriptor of(Role role, Ends ends, KeyTable keys, String... terminals) {
        return new KindDescriptor(
                List.of(terminals),
                keys,
                role,
                ends,
                Optional.empty(),
                Keys.NONE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    KindDescriptor inCatalogue(String word, String... needs) {
        Family its = new Family(word, List.of(needs));
        return new KindDescriptor(terminals, keys, role, ends, Optional.of(its), fresh, idStem, ratedBy, spec);
    }

    KindDescriptor fresh(Object... namesAndValues) {
        return new KindDescriptor(terminals, keys, role, ends, family, Keys.of(namesAndValues), idStem, ratedBy, spec);
    }

    KindDescriptor called(String stem) {
        return new KindDescriptor(terminals, keys, role, ends, family, fresh, Optional.of(stem), ratedBy, spec);
    }

    KindDescriptor ratedBy(String key) {
        return new KindDescriptor(terminals, keys, role, ends, family, fresh, idStem, Optional.of(key), spec);
    }

    KindDescriptor computedBy(SpecMaker maker) {
        return new KindDescriptor(terminals, keys, role, ends, family, fresh, idStem, ratedBy, Optional.of(maker));
    }

    /** Whether a part may name a model of the catalogue. */
    public boolean takesModel() {
        return keys.find(MODEL_KEY).isPresent();
    }

    /** Whether a part from the shelf names its model; others copy the entry's few keys, so that they can be seen. */
    public boolean isModelled() {
        return takesModel() && keys.rules().stream().anyMatch(KeyRule.ModelOr.class::isInstance);
    }

    /** Whether such parts are called A, B, C. */
    public boolean isLettered() {
        return idStem.equals(Optional.of(LETTER));
    }

    /** The first of the letters by which some parts are called. */
    static final String LETTER = "A";

    static final String MODEL_KEY = "model";
}
